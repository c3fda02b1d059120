/** The solver as the oracle's counterpart: a document in, a result out, through the same doors as a file. */
import type { Pose, Rig } from '../../src/solver/document/rig.ts';
import { compile, type Program, readPose, readRig, type SolveResult, solve } from '../../src/solver/index.ts';

/** The rig as it is read. Throws where it is refused. */
export function accepted(rig: Rig): Rig {
  const reading = readRig(rig);
  if (reading.ok) return reading.value;
  throw new Error(`refused: ${JSON.stringify(reading.refusal)}`);
}

/** Throws where the rig is refused or has a cycle. */
export function programOf(rig: Rig): Program {
  const compiled = compile(accepted(rig));
  if (compiled.ok) return compiled.program;
  throw new Error(`cycle: ${compiled.cycle.join(' → ')}`);
}

/** Throws where the pose is refused. */
export function solved(program: Program, pose: Pose): SolveResult {
  const reading = readPose(pose, program.rig);
  if (reading.ok) return solve(program, reading.value);
  throw new Error(`refused: ${JSON.stringify(reading.refusal)}`);
}
