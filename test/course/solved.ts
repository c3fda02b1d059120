import { readFileSync } from 'node:fs';
import { compile, type Pose, type Rig, readRig, solve } from '../../src/solver/index.ts';

/** The rig document of a file, read by the solver. Throws where it is refused. */
export function rigOf(file: string): Rig {
  const reading = readRig(JSON.parse(readFileSync(file, 'utf8')));
  if (!reading.ok) throw new Error(`refused: ${JSON.stringify(reading.refusal)}`);
  return reading.value;
}

/** A rig in a pose: weights and flags, a bone's base, and where its axes point (metres and unit vectors, rig space). */
export function solved(rig: Rig, pose: Pose) {
  const compiled = compile(rig);
  if (!compiled.ok) throw new Error(`a cycle: ${compiled.cycle.join(' → ')}`);
  const { bones, weights, flags } = solve(compiled.program, pose);
  const column = (bone: string, n: number) => bones[bone]!.matrix.slice(4 * n, 4 * n + 3);
  return {
    weights,
    flags: flags.map(({ flag }) => flag),
    axis: (bone: string, letter: 'x' | 'y' | 'z') => column(bone, 'xyz'.indexOf(letter)),
    base: (bone: string) => column(bone, 3),
    /** Degrees by which the bone's +z has gone from ahead to the left, seen from above. */
    aside: (bone: string) => (Math.atan2(column(bone, 2)[0]!, column(bone, 2)[2]!) * 180) / Math.PI,
  };
}

export const moved = (bone: string, x: number, y = 0, z = 0): Pose => ({ bones: { [bone]: { move: [x, y, z] } } });
