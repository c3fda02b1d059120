import type { Program, State } from '../program.ts';

/** A state for one program: all room that evaluating needs. It starts with every world zero. */
export function createState(program: Program): State {
  const { code, memory, layout } = program.inner;
  const own = memory.slice();
  const flags = new Int32Array(program.linkNames.length + program.boneNames.length);
  return {
    world: own.subarray(layout.worlds, layout.weights),
    weights: own.subarray(layout.weights, layout.switches),
    switches: own.subarray(layout.switches, layout.rest),
    machine: { code, memory: own, flags, pose: new Float64Array(0), poseAt: 0, evaluation: 0 },
  };
}
