import type { Answer } from '../../grader/exercise/answer.ts';
import type { ExerciseDefinition } from '../../grader/exercise/definition.ts';
import type { Exercise } from '../../grader/exercise/exercise.ts';
import { openExercise } from '../../grader/exercise/open.ts';
import type { Reading } from '../../solver/document/refusal.ts';
import type { Pose, Rig } from '../../solver/document/rig.ts';
import { draftFromText, type Opened } from './draftFromText.ts';
import { probePoses } from './probePoses.ts';
import { type Proved, proveAnswer } from './proveAnswer.ts';

/** What the page asks of the grader, as plain data. */
export type Request =
  | { ask: 'open'; definition: ExerciseDefinition; edition: string; seed: number }
  | { ask: 'prove'; exercise: Exercise; answer: Answer }
  | { ask: 'probes'; exercise: Exercise; rig: Rig; parts: Readonly<Record<string, string>> }
  | { ask: 'read'; exercise: Exercise; text: string };

/** What comes of each. */
export interface Replies {
  open: Exercise;
  prove: Proved;
  probes: Pose[];
  read: Reading<Opened>;
}

/** Does one piece of grading work: in the worker, or on the page's own thread where there is none. */
export function work(request: Request): Replies[Request['ask']] {
  switch (request.ask) {
    case 'open':
      return openExercise(request.definition, { edition: request.edition, seed: request.seed });
    case 'prove':
      return proveAnswer(request.exercise, request.answer);
    case 'probes':
      return probePoses(request.exercise, request.rig, request.parts);
    case 'read':
      return draftFromText(request.text, request.exercise);
  }
}
