import { describe, expect, test } from 'vitest';
import { nearest } from '../../../src/solver/document/nearest.ts';
import { inWords, listed, quoted, visible } from '../../../src/solver/document/words.ts';

describe('a value in words', () => {
  test.each([
    [undefined, 'nothing'],
    [null, 'null'],
    [true, 'true'],
    [1.5, '1.5'],
    [-0.25, '-0.25'],
    [Number.NaN, 'not a number (NaN)'],
    [Infinity, 'infinity'],
    [-Infinity, 'minus infinity'],
    ['vane_left', '"vane_left"'],
    [[], 'an empty list'],
    [[0, 1.5, -2], '[0, 1.5, -2]'],
    [[1, 2, 3, 4, 5], 'a list of 5'],
    [['a'], 'a list of 1'],
    [{}, 'an empty object'],
    [{ a: 1 }, 'an object with 1 field'],
    [{ a: 1, b: 2, c: 3 }, 'an object with 3 fields'],
    [() => 1, 'something that JSON cannot hold'],
    [1n, 'something that JSON cannot hold'],
  ])('%o', (value, words) => {
    expect(inWords(value)).toBe(words);
  });
});

describe('a text in words', () => {
  test('is cut after 40 characters, whole ones', () => {
    expect(quoted('a'.repeat(40))).toBe(`"${'a'.repeat(40)}"`);
    expect(quoted('a'.repeat(41))).toBe(`"${'a'.repeat(40)}…"`);
    expect(quoted('🪁'.repeat(41))).toBe(`"${'🪁'.repeat(40)}…"`);
    expect(quoted('a'.repeat(1e7)).length).toBe(43);
  });

  test('shows controls, direction marks, lone surrogates and spaces that look like others', () => {
    expect(visible('a\u202eb')).toBe('a\\u{202e}b');
    expect(visible('a\nb\0')).toBe('a\\u{a}b\\u{0}');
    expect(visible('\u200b\ufeff\u2066')).toBe('\\u{200b}\\u{feff}\\u{2066}');
    expect(visible('a\ud800')).toBe('a\\u{d800}');
    expect(visible('a\u00a0b c')).toBe('a\\u{a0}b c');
    expect(visible('Möwe 🪁')).toBe('Möwe 🪁');
  });

  test('lists', () => {
    expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map((words) => listed(words))).toEqual([
      '',
      'a',
      'a or b',
      'a, b or c',
    ]);
  });
});

describe('the nearest word', () => {
  const fields = ['name', 'parent', 'role', 'rest', 'turnOrder'];
  test.each([
    ['parnet', 'parent'],
    ['Parent', 'parent'],
    ['roll', 'role'],
    ['turn_order', 'turnOrder'],
    ['nme', 'name'],
    ['colour', null],
    ['', null],
    ['p'.repeat(1e6), null],
  ])('%s', (word, near) => {
    expect(nearest(word.slice(0, 1e6), fields)).toBe(near);
  });
});
