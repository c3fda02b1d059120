import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { type ContentFolders, exerciseIdsIn, folderOfExercise } from '../course/content-folders.ts';
import { type ExerciseFile, readExerciseFile } from '../course/exercise-files.ts';
import { Unusable } from './refusal.ts';

/** The course's own content. */
export const OWN = join(import.meta.dirname, '../../content');

/** The exercises at hand: the course's own, and those of a private folder, which count first, where one is given. */
export class Exercises {
  readonly #folders: ContentFolders;
  readonly #read = new Map<string, ExerciseFile>();

  constructor(privateDir?: string) {
    if (privateDir !== undefined && !existsSync(join(privateDir, 'exercises'))) {
      throw new Unusable(`${privateDir}: found no folder "exercises" in it, expected a content folder`);
    }
    this.#folders = privateDir === undefined ? [OWN] : [OWN, privateDir];
  }

  ids(): string[] {
    return exerciseIdsIn(this.#folders);
  }

  /** One that the user names. Throws Unusable where there is none. */
  known(id: string): ExerciseFile {
    const file = this.get(id);
    if (file) return file;
    throw new Unusable(`there is no exercise "${id}"; counterpose exercise --list names them`);
  }

  /** Null where there is no such exercise. Throws Unusable where its content is at fault. */
  get(id: string): ExerciseFile | null {
    const known = this.#read.get(id);
    if (known) return known;
    const folder = folderOfExercise(this.#folders, id);
    if (folder === undefined) return null;
    try {
      const file = readExerciseFile(folder, id);
      this.#read.set(id, file);
      return file;
    } catch (error) {
      throw new Unusable((error as Error).message);
    }
  }
}
