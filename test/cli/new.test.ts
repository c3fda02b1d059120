import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseFrontmatter } from '@astrojs/markdown-remark';
import { describe, expect, test } from 'vitest';
import { COMMANDS } from '../../src/course/kit/commands.ts';
import { lessonSchema, privateLessonSchema } from '../../src/course/lesson-schema.ts';
import { answerTo, exerciseFor } from '../support/exercises.ts';
import { counterpose } from './command.ts';
import { contentFolder } from './contentFolder.ts';
import { temporaryFolder } from './folder.ts';

const folder = temporaryFolder();
const content = join(folder.path, 'private');

test('new exercise lays out a folder that every verb can read, and what is missing is told in plain words', async () => {
  const made = await counterpose(['new', 'exercise', 'crab-pot', '--content', content]);
  expect(made.status).toBe(0);
  expect(made.stdout.trim().split('\n')).toEqual(
    ['exercise.json', 'start.json'].map((name) => join(content, 'exercises/crab-pot', name)),
  );
  const checked = await counterpose(['check-content', 'crab-pot', '--content', content]);
  expect(checked.status).toBe(1);
  expect(checked.stdout).toMatch(/^crab-pot: 0 references, expected at least 2$/m);
  expect(checked.stdout).toMatch(/^crab-pot, at \/why: still to be written: why an animator cares$/m);
  const shown = await counterpose(['exercise', 'crab-pot', '--content', content]);
  expect(shown.stdout).toMatch(/^ {2}vane is a helper under quay/m);
  expect(shown.stdout).toMatch(/^ {2}kite, move x, from -2 to 2 m$/m);
});

test('new exercise leaves alone what is there', async () => {
  await counterpose(['new', 'exercise', 'twice', '--content', content]);
  const { status, stderr } = await counterpose(['new', 'exercise', 'twice', '--content', content]);
  expect(status).toBe(2);
  expect(stderr).toMatch(/is there already/);
});

test('new lesson lays out a lesson of the outline whose head fits the schema', async () => {
  const { status } = await counterpose(['new', 'lesson', '3.6', 'lids', '--content', content]);
  expect(status).toBe(0);
  const text = readFileSync(join(content, 'lessons/3.6-lids/lesson.mdx'), 'utf8');
  expect(lessonSchema.parse(parseFrontmatter(text).frontmatter)).toMatchObject({ number: '3.6', exercises: [] });
});

test('new lesson lays out one of a private folder’s own chapter there, and nowhere else', async () => {
  const made = await counterpose(['new', 'lesson', '7.1', 'our-bellows', '--content', content]);
  expect(made.status).toBe(0);
  const text = readFileSync(join(content, 'lessons/7.1-our-bellows/lesson.mdx'), 'utf8');
  expect(privateLessonSchema.parse(parseFrontmatter(text).frontmatter)).toMatchObject({ number: '7.1' });
  const refused = await counterpose(['new', 'lesson', '7.1', 'our-bellows']);
  expect(refused.status).toBe(2);
  expect(refused.stderr).toMatch(/no lesson 7\.1/);
});

test.each([
  [['new'], /expected exercise or lesson/],
  [['new', 'plate', 'x'], /expected exercise or lesson/],
  [['new', 'exercise'], /one id is expected/],
  [['new', 'exercise', '../crab'], /is no id/],
  [['new', 'lesson', '3.6'], /a number and a slug/],
  [['new', 'lesson', '9.9', 'lids'], /no lesson 9\.9/],
  [['new', 'lesson', '3.6', '../lids'], /is no slug/],
])('%j is refused', async (args, message) => {
  const { status, stderr } = await counterpose([...args, '--content', content]);
  expect(status).toBe(2);
  expect(stderr).toMatch(message);
  expect(existsSync(join(folder.path, 'lids'))).toBe(false);
});

test('audit --list names variants, right rigs and mistakes', async () => {
  const own = contentFolder({ 'sound-vane': {} });
  const { status, stdout } = await counterpose(['audit', 'sound-vane', '--list', '--content', own]);
  expect(status).toBe(0);
  expect(stdout).toMatch(/^sound-vane: 1 variants, at 1 times the size:$/m);
  expect(stdout).toMatch(/^ {2}aim, bones and drivers written in another order$/m);
  expect(stdout).toMatch(/^ {2}aim, vane\.watch: aims -z in place of \+z$/m);
});

test('grade finds the exercises of a private folder, which come before the course’s own', async () => {
  const own = contentFolder({ 'one-vane': {} });
  const foreign = exerciseFor('one-vane');
  const answer = folder.put('answer.json', answerTo(foreign, foreign.references[0]!.rig));
  const { status, stdout } = await counterpose(['grade', answer, '--json', '--content', own]);
  expect(status).toBe(0);
  expect(JSON.parse(stdout)).toMatchObject({ exercise: 'one-vane', flags: ['edition-differs'], mark: 0 });
  const course = await counterpose(['grade', answer, '--json']);
  expect(JSON.parse(course.stdout)).toMatchObject({ flags: [], mark: 1, passed: true });
});

describe('the commands of the authors’ page', () => {
  const words = (command: string) => command.replace(/^npx counterpose /, '').split(' ');

  test.each(Object.entries(COMMANDS))('%s runs', async (_, command) => {
    const { status, stderr } = await counterpose(words(command), { cwd: folder.path });
    expect(stderr).toBe('');
    expect(status).toBeLessThan(2);
  });
});
