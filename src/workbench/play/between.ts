import type { BonePose, Pose, Vec3 } from '../../solver/document/rig.ts';

const REST: Record<'move' | 'angles' | 'size', Vec3> = { move: [0, 0, 0], angles: [0, 0, 0], size: [1, 1, 1] };

/**
 * The pose a share `t` of the way from one to another, number by number: moves, angles, sizes, and switches that slide; the
 * others change half way. What a pose leaves out is at rest. Turns are by angles, as the controls give them.
 * @param defaults "bone.switch" to its default
 */
export function between(a: Pose, b: Pose, t: number, defaults: ReadonlyMap<string, number>): Pose {
  const bones = [...new Set([...Object.keys(a.bones ?? {}), ...Object.keys(b.bones ?? {})])];
  const switches = [...new Set([...Object.keys(a.switches ?? {}), ...Object.keys(b.switches ?? {})])];
  const valueIn = (pose: Pose, name: string) => pose.switches?.[name] ?? defaults.get(name) ?? 0;
  return {
    bones: Object.fromEntries(bones.map((name) => [name, boneBetween(a.bones?.[name], b.bones?.[name], t)])),
    switches: Object.fromEntries(
      switches.map((name) => [name, valueIn(a, name) + t * (valueIn(b, name) - valueIn(a, name))]),
    ),
  };
}

function boneBetween(a: BonePose = {}, b: BonePose = {}, t: number): BonePose {
  const angles = (pose: BonePose) => (pose.turn && 'angles' in pose.turn ? pose.turn.angles : undefined);
  return {
    ...(a.move || b.move ? { move: mixed('move', a.move, b.move, t) } : {}),
    ...(a.turn || b.turn ? { turn: { angles: mixed('angles', angles(a), angles(b), t) } } : {}),
    ...(a.size || b.size ? { size: mixed('size', a.size, b.size, t) } : {}),
  };
}

function mixed(kind: keyof typeof REST, a: Vec3 = REST[kind], b: Vec3 = REST[kind], t: number): Vec3 {
  return [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), a[2] + t * (b[2] - a[2])];
}
