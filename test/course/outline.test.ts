import { expect, test } from 'vitest';
import { chapterOf, chapters, chaptersWith, isPrivateNumber } from '../../src/course/outline.ts';

const ours = [{ number: '7.1', title: 'Our bellows' }];

test('lessons of a private folder stand in a chapter after the plan', () => {
  const all = chaptersWith('The workshop', ours);
  expect(all.slice(0, -1)).toEqual(chapters);
  expect(chapterOf('7.1', all)).toEqual({ number: '7', title: 'The workshop', lessons: ours });
  expect(chapterOf('3.1', all).title).toBe('Aim tracking');
});

test('without such lessons there is no such chapter', () => {
  expect(chaptersWith('The workshop', [])).toEqual(chapters);
  expect(() => chapterOf('7.1', chapters)).toThrow('No chapter holds lesson 7.1.');
});

test('the numbers of a private chapter are none of the plan', () => {
  const planned = chapters.flatMap(({ lessons }) => lessons.map(({ number }) => number));
  expect(planned.filter(isPrivateNumber)).toEqual([]);
  expect(['7.1', '7.9', '7.0', '7.10', '8.1', '7'].filter(isPrivateNumber)).toEqual(['7.1', '7.9']);
});
