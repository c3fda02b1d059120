import { expect, test } from 'vitest';
import { inOrder } from '../../src/course/site/lesson-order.ts';

const lesson = (id: string, from = 'content') => {
  return { id, data: { number: id.slice(0, 3) }, filePath: `${from}/lessons/${id}/lesson.mdx` };
};
const own = [lesson('3.1-the-shortest-turn'), lesson('1.1-bones-bases-tips')];

test('own and private lessons stand in the order of their numbers', () => {
  const ids = inOrder(own, [lesson('7.1-our-bellows'), lesson('2.8-lids')]).map(({ id }) => id);
  expect(ids).toEqual(['1.1-bones-bases-tips', '2.8-lids', '3.1-the-shortest-turn', '7.1-our-bellows']);
});

test('a private lesson takes the place of one whose folder has the same name', () => {
  const ours = lesson('3.1-the-shortest-turn', 'workshop');
  expect(inOrder(own, [ours])).toEqual([own[1], ours]);
});

test('two lessons of one number are refused', () => {
  expect(() => inOrder(own, [lesson('3.1-a-first-vane', 'workshop')])).toThrow(
    /^workshop\/lessons\/3\.1-a-first-vane\/lesson\.mdx: lesson 3\.1 is there already\. Name the folder 3\.1-the-shortest-turn/,
  );
});

test('a folder whose name does not start with its number is refused', () => {
  const astray = { ...lesson('7.1-our-bellows'), data: { number: '7.2' } };
  expect(() => inOrder(own, [astray])).toThrow(/must start with its number, "7\.2-"/);
});
