import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeAll, describe, expect, test, vi } from 'vitest';
import {
  exerciseFileIn,
  exerciseIdsIn,
  folderOfExercise,
  privateLessonsFolder,
  siteFolders,
} from '../../src/course/content-folders.ts';
import { counterpose } from '../cli/command.ts';
import { temporaryFolder } from '../cli/folder.ts';
import { contentDir as OWN } from '../support/exercises.ts';

const { path } = temporaryFolder();
const workshop = join(path, 'workshop');

beforeAll(async () => {
  for (const id of ['bellows-lid', 'one-vane']) {
    await counterpose(['new', 'exercise', id, '--content', workshop]);
  }
});
afterEach(() => vi.unstubAllEnvs());

describe('the course and a private folder', () => {
  const folders = [OWN, workshop];

  test('give the exercises of both, each id once', () => {
    const ids = exerciseIdsIn(folders);
    expect(ids).toContain('bellows-lid');
    expect(ids).toEqual(exerciseIdsIn([OWN]).concat('bellows-lid').sort());
  });

  test('a private exercise takes the place of the course’s own of the same id', () => {
    expect(folderOfExercise(folders, 'one-vane')).toBe(workshop);
    expect(exerciseFileIn(folders, 'one-vane')).not.toEqual(exerciseFileIn([OWN], 'one-vane'));
    expect(folderOfExercise(folders, 'flinch')).toBe(OWN);
  });

  test('an exercise that neither holds is told of', () => {
    expect(() => exerciseFileIn(folders, 'no-vane')).toThrow(/no exercise "no-vane" in .*content or .*workshop/);
  });
});

describe('the folders of the site', () => {
  test.each([undefined, ''])('are the course’s own alone where COUNTERPOSE_CONTENT is %j', (named) => {
    vi.stubEnv('COUNTERPOSE_CONTENT', named);
    expect(siteFolders()).toEqual([OWN]);
  });

  test('are that and the one that COUNTERPOSE_CONTENT names', () => {
    vi.stubEnv('COUNTERPOSE_CONTENT', workshop);
    expect(siteFolders()).toEqual([OWN, workshop]);
  });

  test('a folder without content is refused, for its name may be misspelt', () => {
    const empty = join(path, 'empty');
    mkdirSync(empty);
    vi.stubEnv('COUNTERPOSE_CONTENT', empty);
    expect(() => siteFolders()).toThrow(`found no folder "lessons" or "exercises" in ${empty}`);
  });

  test('a folder of exercises alone has no lessons', () => {
    vi.stubEnv('COUNTERPOSE_CONTENT', workshop);
    expect(privateLessonsFolder()).toBeNull();
  });

  test('a folder of lessons alone has no exercises', () => {
    const folder = join(path, 'talk');
    mkdirSync(join(folder, 'lessons'), { recursive: true });
    vi.stubEnv('COUNTERPOSE_CONTENT', folder);
    expect(exerciseIdsIn(siteFolders())).toEqual(exerciseIdsIn([OWN]));
    expect(privateLessonsFolder()).toBe(join(folder, 'lessons'));
  });
});
