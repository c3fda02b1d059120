import type { Pose } from '../document/rig.ts';
import { packPose } from '../pose/packPose.ts';
import { type Program, type SolveResult, type State, WORLD_STRIDE } from '../program.ts';
import { createState } from './createState.ts';
import { evaluate } from './evaluate.ts';
import { readFlags } from './readFlags.ts';

/**
 * One pose to the worlds of all bones (16 numbers, column-major, rig space, metres), all weights and the flags. The
 * records have no prototype, so that any name is a plain key.
 */
export function solve(program: Program, pose: Pose): SolveResult {
  const state = createState(program);
  evaluate(program, state, packPose(program, pose));
  return resultOf(program, state);
}

function resultOf(program: Program, state: State): SolveResult {
  const result: SolveResult = {
    bones: Object.create(null),
    weights: Object.create(null),
    flags: readFlags(program, state),
  };
  program.boneNames.forEach((name, bone) => {
    result.bones[name] = { matrix: matrixAt(state.world, WORLD_STRIDE * bone) };
  });
  program.linkNames.forEach((name, link) => {
    result.weights[name] = state.weights[link];
  });
  return result;
}

function matrixAt(world: Float64Array, at: number): number[] {
  const column = (i: number, last: number) => [world[at + i], world[at + i + 1], world[at + i + 2], last];
  return [...column(0, 0), ...column(3, 0), ...column(6, 0), ...column(9, 1)];
}
