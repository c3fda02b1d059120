import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type ExerciseFile, exerciseIds, readExerciseFile } from './exercise-files.ts';

/** Folders of lessons and exercises, the course's own first. Of two exercises of one id the later folder's counts. */
export type ContentFolders = readonly string[];

/** The folders of the site that is built, which runs in the course's own: its content, and the private one if any. */
export function siteFolders(): ContentFolders {
  const own = resolve('content');
  const other = privateFolder();
  return other === null ? [own] : [own, other];
}

/** The private folder that COUNTERPOSE_CONTENT names, null where it names none. Throws where there is no content in it. */
export function privateFolder(): string | null {
  const named = process.env.COUNTERPOSE_CONTENT;
  if (!named) return null;
  const folder = resolve(named);
  if (!['lessons', 'exercises'].some((kind) => existsSync(join(folder, kind)))) {
    throw new Error(`COUNTERPOSE_CONTENT: found no folder "lessons" or "exercises" in ${folder}`);
  }
  return folder;
}

/** Where the private folder keeps lessons; null where there is no such folder, or it holds exercises alone. */
export function privateLessonsFolder(): string | null {
  const folder = privateFolder();
  if (folder === null) return null;
  const lessons = join(folder, 'lessons');
  return existsSync(lessons) ? lessons : null;
}

/** The ids of all exercises, in order of their names. */
export function exerciseIdsIn(folders: ContentFolders): string[] {
  return [...new Set(folders.flatMap(idsOf))].sort();
}

/** The folder whose exercise of that id counts, or undefined. */
export function folderOfExercise(folders: ContentFolders, id: string): string | undefined {
  return folders.findLast((folder) => idsOf(folder).includes(id));
}

/** Reads the exercise of that id. Throws where there is none, or naming its file and place where it is at fault. */
export function exerciseFileIn(folders: ContentFolders, id: string): ExerciseFile {
  const folder = folderOfExercise(folders, id);
  if (folder === undefined) throw new Error(`there is no exercise "${id}" in ${folders.join(' or ')}`);
  return readExerciseFile(folder, id);
}

/** A private folder may hold lessons alone. */
const idsOf = (folder: string) => (existsSync(join(folder, 'exercises')) ? exerciseIds(folder) : []);
