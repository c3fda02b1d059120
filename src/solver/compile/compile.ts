import type { Rig } from '../document/rig.ts';
import { END } from '../machine/ops.ts';
import { POSE_STRIDE, type Program } from '../program.ts';
import { namedCycle } from './cycle.ts';
import { drivenThings } from './driven.ts';
import { dependencies } from './graph.ts';
import { Places } from './places.ts';
import { matrixOf, type Rigid } from './restTransforms.ts';
import { indexRig } from './rigIndex.ts';
import { type Step, type StepRun, schedule } from './schedule.ts';
import { stepsOf } from './steps.ts';

export type Compiled = { ok: true; program: Program } | { ok: false; cycle: string[] };

/**
 * Makes a rig that was read without refusal into a program, or names a cycle in it along the walk, each reading the next
 * and the first repeated at the end: ["vane_left.watch", "wind_left", "vane_left.watch"].
 */
export function compile(rig: Rig): Compiled {
  const index = indexRig(rig);
  const graph = dependencies(index);
  const places = new Places(index);
  const steps = stepsOf(graph, places, drivenThings(index));
  const order = schedule(graph.needs, steps);
  if (!order.ok) return { ok: false, cycle: namedCycle(graph, index, order.isOrdered) };
  const program: Program = {
    rig,
    boneNames: index.bones.map((bone) => bone.name),
    boneIndex: index.boneIndex,
    switchNames: index.switchNames,
    linkNames: index.linkNames,
    poseLength: POSE_STRIDE * index.bones.length + index.switches.length,
    restWorld: Float64Array.from(places.rests.flatMap(worldOf)),
    inner: {
      code: codeOf(order.runs, steps),
      memory: Float64Array.from(places.memory),
      layout: places.layout,
      runs: order.runs.map(({ op, nodes }) => ({ op, records: nodes.map((node) => steps[node]!.record) })),
    },
  };
  return { ok: true, program };
}

const worldOf = ({ base, turn }: Rigid): number[] => [...matrixOf(turn), ...base];

function codeOf(runs: readonly StepRun[], steps: readonly (Step | null)[]): Int32Array {
  const code: number[] = [];
  for (const { op, nodes } of runs) {
    code.push(op, nodes.length);
    for (const node of nodes) code.push(...steps[node]!.record);
  }
  code.push(END);
  return Int32Array.from(code);
}
