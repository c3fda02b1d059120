import type { ExerciseDefinition } from '../../grader/exercise/definition.ts';

// Common practice, no source: what a practised hand needs for each thing that is asked or set.
const WORDS_A_MINUTE = 200;
const MINUTES_TO_LOOK = 0.5;
const MINUTES_TO_NAME_A_FAULT = 0.5;
const MINUTES_A_NUMBER = 1;
const MINUTES_A_CONTROL = 0.5;
const MINUTES_A_FIELD = 1 / 6;

/** How long a rebuild of the exercise takes by estimate, in whole minutes: its task read, and the shortest answer made. */
export function minutesOf(definition: ExerciseDefinition): number {
  const reading = definition.task.split(/\s+/).length / WORDS_A_MINUTE;
  return Math.ceil(reading + workMinutes(definition));
}

function workMinutes(definition: ExerciseDefinition): number {
  const { kind, inputs, references } = definition;
  if (kind === 'predict' || kind === 'order') return MINUTES_A_NUMBER * numbersAsked(definition);
  if (kind === 'pose') return MINUTES_TO_LOOK + MINUTES_A_CONTROL * inputs.length;
  const fields = Math.min(...references.map(({ edit }) => fieldsIn(edit ?? {})));
  return MINUTES_TO_LOOK + (kind === 'repair' ? MINUTES_TO_NAME_A_FAULT : 0) + MINUTES_A_FIELD * fields;
}

/** Requirements that stand in some structures alone are not all asked at once: the most that any structure asks. */
function numbersAsked({ requirements, structures }: ExerciseDefinition): number {
  const asked = structures.map(({ id }) => {
    return requirements.filter((each) => (each as { only?: readonly string[] }).only?.includes(id) ?? true).length;
  });
  return Math.max(...asked);
}

/** How many values an edit sets. */
function fieldsIn(edit: unknown): number {
  if (edit === null || typeof edit !== 'object') return 1;
  return Object.values(edit).reduce((sum: number, inner) => sum + fieldsIn(inner), 0);
}
