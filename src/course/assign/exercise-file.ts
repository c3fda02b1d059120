import type { ExerciseDefinition } from '../../grader/exercise/definition.ts';
import { fetchJson } from './course-root.ts';

/** An exercise as the course's endpoint gives it. */
export interface ExerciseFile {
  definition: ExerciseDefinition;
  edition: string;
}

const fetched = new Map<string, Promise<ExerciseFile>>();

/** Fetched once; one that could not be had is asked for again. */
export function exerciseFile(id: string): Promise<ExerciseFile> {
  const known = fetched.get(id);
  if (known) return known;
  const asked = fetchJson<ExerciseFile>(`exercises/${id}.json`);
  fetched.set(id, asked);
  asked.catch(() => fetched.delete(id));
  return asked;
}
