import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readExerciseFile } from '../../src/course/exercise-files.ts';
import { minutesOf } from '../../src/course/skills/minutes.ts';

const CONTENT = join(import.meta.dirname, '../../content');
const definitionOf = (id: string) => readExerciseFile(CONTENT, id).definition;
const minutes = (id: string) => minutesOf(definitionOf(id));

test('one link is made in less time than a holder with two targets', () => {
  expect(minutes('one-vane')).toBeLessThanOrEqual(3);
  expect(minutes('two-vanes-one-holder')).toBeGreaterThan(3);
});

test('a prediction takes its reading and a minute for each number that is asked at once', () => {
  const definition = definitionOf('how-high-the-hook');
  // 54 words, and two numbers in each structure, though four stand in the file.
  expect(definition.requirements.length).toBe(4);
  expect(minutesOf(definition)).toBe(3);
});

test('more to read, or more to set, is more time', () => {
  const definition = definitionOf('one-vane');
  expect(minutesOf({ ...definition, task: definition.task.repeat(6) })).toBeGreaterThan(minutesOf(definition));
  const references = definition.references.filter(({ id }) => id === 'pointer');
  expect(minutesOf({ ...definition, references })).toBeGreaterThan(minutesOf(definition));
});
