import { compile, type Pose, type Program, type Rig, type SolveResult, solve } from '../../src/solver/index.ts';

/** The rig's program; throws, with the walk, where it has a cycle. */
export function programFor(rig: Rig): Program {
  const compiled = compile(rig);
  if (!compiled.ok) throw new Error(`a cycle: ${compiled.cycle.join(' → ')}`);
  return compiled.program;
}

export const solveRig = (rig: Rig, pose: Pose = {}): SolveResult => solve(programFor(rig), pose);

/** The turn of a bone without size or shear, as [x, y, z, w] with w ≥ 0. Only for turns under 180°. */
export function turnOf(result: SolveResult, name: string): number[] {
  const m = result.bones[name].matrix;
  const w = Math.sqrt(Math.max(0, 1 + m[0] + m[5] + m[10])) / 2;
  return [(m[6] - m[9]) / (4 * w), (m[8] - m[2]) / (4 * w), (m[1] - m[4]) / (4 * w), w];
}
