import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { smallExercise } from '../grader/audit/fitting.ts';
import { temporaryFolder } from './folder.ts';

/** A private folder of content that stands while a file of tests runs, with the small exercise changed as is said. */
export function contentFolder(exercises: Readonly<Record<string, object>>): string {
  const { path } = temporaryFolder();
  for (const [id, more] of Object.entries(exercises)) {
    const folder = join(path, 'exercises', id);
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, 'exercise.json'), JSON.stringify({ ...smallExercise(more), id }));
  }
  return path;
}
