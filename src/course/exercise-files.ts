import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { ExerciseDefinition } from '../grader/exercise/definition.ts';
import { editionOf } from './edition.ts';
import { exerciseSchema } from './exercise-schema.ts';

export interface ExerciseFile {
  definition: ExerciseDefinition;
  edition: string;
}

/** The ids of the exercises in a content folder, in order of their names. */
export function exerciseIds(contentDir: string): string[] {
  return readdirSync(join(contentDir, 'exercises'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
}

/** Reads content/exercises/<id>/exercise.json, with the files it names. Throws, naming the file and place. */
export function readExerciseFile(contentDir: string, id: string): ExerciseFile {
  const folder = join(contentDir, 'exercises', id);
  const file = join(folder, 'exercise.json');
  const parsed = exerciseSchema.safeParse(withFiles(parseFile(file), folder));
  if (!parsed.success) {
    const lines = parsed.error.issues.map(({ path, message }) => `  /${path.join('/')}: ${message}`);
    throw new Error(`${file} does not fit the schema of exercises:\n${lines.join('\n')}`);
  }
  const definition = parsed.data as unknown as ExerciseDefinition;
  if (definition.id !== id) throw new Error(`${file}: the id is "${definition.id}" but the folder is ${id}`);
  return { definition, edition: editionOf(definition) };
}

/** Reads a file of JSON. Throws, naming it. */
export function parseFile(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch (error) {
    throw new Error(`${file} cannot be read as JSON: ${(error as Error).message}`);
  }
}

/** Replaces every { "$file": name } by that file of the same folder. */
function withFiles(value: unknown, folder: string): unknown {
  if (Array.isArray(value)) return value.map((item) => withFiles(item, folder));
  if (value === null || typeof value !== 'object') return value;
  if ('$file' in value) {
    const name = String(value.$file);
    if (basename(name) !== name)
      throw new Error(`"$file": ${name} must be a file of the exercise's own folder ${folder}`);
    return withFiles(parseFile(join(folder, name)), folder);
  }
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, withFiles(inner, folder)]));
}
