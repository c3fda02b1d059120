import type { Answer } from '../grader/exercise/answer.ts';
import type { Exercise } from '../grader/exercise/exercise.ts';
import type { Graded } from '../grader/result.ts';

/** Where an exercise comes from and who is told of its proofs, where somebody has set it. */
export interface Setting {
  /** Opens the variant of a seed. */
  readonly open: (seed: number) => Promise<Exercise>;
  /** The seed of the drawing after this one, for kinds that redraw. */
  readonly nextSeed: (seed: number) => number;
  /** Put before the name under which the work is kept, so that it lies apart from the course's own. */
  readonly keptUnder: string;
  /** Told of every proof: what was proved and what came of it. */
  readonly proved: (answer: Answer, result: Graded) => void;
}
