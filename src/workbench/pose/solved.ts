import type { Pose, Rig, Switch } from '../../solver/document/rig.ts';
import {
  compile,
  createState,
  evaluate,
  type Flag,
  type Program,
  packPose,
  readFlags,
  type State,
} from '../../solver/index.ts';

/** A rig compiled and ready to be posed. */
export interface Ready {
  readonly rig: Rig;
  readonly program: Program;
  readonly state: State;
  readonly packed: Float64Array<ArrayBuffer>;
}

/** One evaluation, in arrays of its own. */
export interface Solved {
  readonly rig: Rig;
  /** WORLD_STRIDE doubles a bone, in document order. */
  readonly world: Float64Array;
  readonly flags: readonly Flag[];
}

/** The rig made ready, or the cycle that keeps it from being evaluated, walked by name. */
export function ready(rig: Rig): { ok: true; ready: Ready } | { ok: false; cycle: string[] } {
  const compiled = compile(rig);
  if (!compiled.ok) return compiled;
  const { program } = compiled;
  return {
    ok: true,
    ready: { rig, program, state: createState(program), packed: new Float64Array(program.poseLength) },
  };
}

/** The rig in a pose; what of the pose the rig does not have, or does not allow, is left at rest. */
export function solved({ rig, program, state, packed }: Ready, pose: Pose): Solved {
  evaluate(program, state, packPose(program, within(rig, pose), packed));
  return { rig, world: state.world.slice(), flags: readFlags(program, state) };
}

/** A pose kept from before an edit may speak of bones and switches that are gone, or of values out of range. */
export function within(rig: Rig, pose: Pose): Pose {
  const bones = new Set(rig.bones.map((bone) => bone.name));
  const switches = new Map<string, Switch>(
    rig.bones.flatMap((bone) => (bone.switches ?? []).map((own) => [`${bone.name}.${own.name}`, own] as const)),
  );
  const kept = Object.entries(pose.bones ?? {}).filter(([name]) => bones.has(name));
  const set = Object.entries(pose.switches ?? {}).flatMap(([name, value]) => {
    const own = switches.get(name);
    if (!own) return [];
    const bounded = Math.min(own.max, Math.max(own.min, value));
    const either = bounded - own.min < own.max - bounded ? own.min : own.max;
    return [[name, own.sliding ? bounded : either] as const];
  });
  return { bones: Object.fromEntries(kept), switches: Object.fromEntries(set) };
}
