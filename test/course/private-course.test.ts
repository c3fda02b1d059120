import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { readPrivateCourse, siteSkills } from '../../src/course/private-course.ts';
import { SKILLS } from '../../src/skills/table.ts';
import { temporaryFolder } from '../cli/folder.ts';

const { path, put } = temporaryFolder();
const lid = { id: 'bellows-lid', name: 'Open a lid by its bellows', lesson: '7.1' };

/** A private folder with this course.json. */
function folderWith(name: string, course: unknown): string {
  const folder = join(path, name);
  mkdirSync(join(folder, 'lessons'), { recursive: true });
  if (course !== undefined) put(`${name}/course.json`, course);
  return folder;
}

afterEach(() => vi.unstubAllEnvs());

test('course.json gives a title and skills', () => {
  const course = { title: 'At the Saltmarsh workshop', skills: [lid] };
  expect(readPrivateCourse(folderWith('told', course))).toEqual(course);
});

test('without it the chapter is named after the folder', () => {
  expect(readPrivateCourse(folderWith('workshop', undefined))).toEqual({ title: 'workshop', skills: [] });
});

test.each([
  ['a misspelt field', { titel: 'x' }, /course\.json: .*Unrecognized key: "titel"/s],
  ['a skill without a name', { skills: [{ id: 'lid', lesson: null }] }, /course\.json: .*skills\[0\]\.name/s],
  ['a skill of the course’s own', { skills: [{ ...lid, id: 'switch' }] }, /has a skill "switch" already/],
  ['what is not JSON', '{ title', /course\.json cannot be read as JSON/],
])('%s is refused, with the file', (what, course, message) => {
  expect(() => readPrivateCourse(folderWith(what, course))).toThrow(message);
});

test('the skills of the site are the course’s and those of the folder it is built with', () => {
  vi.stubEnv('COUNTERPOSE_CONTENT', undefined);
  expect(siteSkills()).toEqual(SKILLS);
  vi.stubEnv('COUNTERPOSE_CONTENT', folderWith('named', { skills: [lid] }));
  expect(siteSkills()).toEqual([...SKILLS, lid]);
});
