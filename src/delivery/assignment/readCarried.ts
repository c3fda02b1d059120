import { editionOf } from '../../course/edition.ts';
import { exerciseSchema } from '../../course/exercise-schema.ts';
import { openExercise } from '../../grader/index.ts';
import { type Reader, refuse } from '../../solver/document/reader.ts';
import { needed, record } from '../../solver/document/structures.ts';
import { text } from '../../solver/document/values.ts';
import { quoted } from '../../solver/document/words.ts';
import type { CarriedExercise } from './assignment.ts';

/** An exercise that an assignment carries: as strict as the course's own, unchanged since, and one that opens. */
export const carried: Reader<CarriedExercise> = (value) => {
  const read = plain(value, null);
  const edition = editionOf(read.definition);
  if (edition !== read.edition) {
    refuse(`the edition ${quoted(read.edition)}`, `${quoted(edition)}, by its text`, ['edition']);
  }
  try {
    openExercise(read.definition, { edition, seed: 0 });
  } catch (error) {
    const found = `an exercise that cannot be opened: ${(error as Error).message.slice(0, 200)}`;
    refuse(found, 'an exercise', ['definition']);
  }
  return read;
};

const definition: Reader<CarriedExercise['definition']> = (value) => {
  const parsed = exerciseSchema.safeParse(value);
  if (parsed.success) return value as CarriedExercise['definition'];
  const [first] = parsed.error.issues;
  const path = first!.path.map((key) => (typeof key === 'symbol' ? String(key) : key));
  return refuse('what no exercise holds', first!.message, path);
};

const plain = record<CarriedExercise>('a carried exercise', {
  definition: needed(definition),
  edition: needed(text),
});
