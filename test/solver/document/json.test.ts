import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readJson } from '../../../src/solver/document/json.ts';
import { readRigText } from '../../../src/solver/index.ts';
import { mustRead, quay, refusal } from './trial.ts';

const nested = (depth: number) => '['.repeat(depth) + ']'.repeat(depth);

describe('JSON', () => {
  test('reads what JSON.parse reads, to the same value', () => {
    fc.assert(
      fc.property(fc.json(), fc.nat(3), (text, indent) => {
        const spaced = JSON.stringify(JSON.parse(text), null, indent);
        expect(mustRead(readJson(spaced))).toEqual(JSON.parse(spaced));
      }),
      { seed: 7, numRuns: 500 },
    );
  });

  test.each([
    ['1e999', Infinity],
    ['-0', -0],
    ['1.5E-3', 0.0015],
    [' \t\r\n"\\u00e9\\ud83e\\ude81\\n\\/" ', 'é🪁\n/'],
    ['"\u2028"', '\u2028'],
    ['{"":{"":[]}}', { '': { '': [] } }],
  ])('%s', (text, value) => {
    expect(mustRead(readJson(text))).toEqual(value);
  });

  test('goes 64 deep, and no deeper', () => {
    expect(mustRead(readJson(nested(64)))).toEqual(JSON.parse(nested(64)));
    for (const text of [nested(65), '['.repeat(1e6), `${'['.repeat(64)}{`]) {
      expect(refusal(readJson(text)).found).toMatch(/line 1, column 65/);
      expect(refusal(readJson(text)).expected).toMatch(/at most 64 lists and objects/);
    }
    expect(refusal(readJson('{"a":'.repeat(1e5))).expected).toMatch(/at most 64/);
  });

  test('keeps a field named like a prototype as a plain one', () => {
    const value = mustRead(readJson('{"__proto__":{"a":1},"constructor":2}')) as object;
    expect(Object.getPrototypeOf(value)).toBe(Object.prototype);
    expect(Object.entries(value)).toEqual([
      ['__proto__', { a: 1 }],
      ['constructor', 2],
    ]);
  });
});

describe('what is not JSON is refused, with the position in words', () => {
  test.each([
    ['', /the end of the text at line 1, column 1/, /a value/],
    ['\ufeff{}', /"\\u\{feff\}" at line 1, column 1/, /a value/],
    ['{\n  "a": 1,\n}', /"}" at line 3, column 1/, /a field's name in double quotes/],
    ['[1,]', /"\]" at line 1, column 4/, /a value/],
    ['[1 2]', /"2" at line 1, column 4/, /"," or "\]"/],
    ['{"a" 1}', /"1" at line 1, column 6/, /":"/],
    ['{"a":1 "b":2}', /"""? at line 1, column 8/, /"," or "}"/],
    ["{'a':1}", /"'" at line 1, column 2/, /double quotes/],
    ['{a:1}', /"a" at line 1, column 2/, /double quotes/],
    ['// rig\n{}', /"\/" at line 1, column 1/, /a value/],
    ['"a', /the end of the text at line 1, column 3/, /closing double quote/],
    ['"a\nb"', /"\\u\{a\}" at line 1, column 3/, /closing double quote/],
    ['"\\x"', /"\\" at line 1, column 2/, /\\u and four hex digits/],
    ['"\\u12g4"', /"\\" at line 1, column 2/, /four hex digits/],
    ['"🪁\\x"', /at line 1, column 3/, /hex/],
    ['\r\n\r\n tru', /"t" at line 3, column 2/, /a value/],
    ['01', /"1" at line 1, column 2/, /the end of the text after 0/],
    ['-', /"-" at line 1, column 1/, /a number/],
    ['1.', /"\." at line 1, column 2/, /the end of the text after 1/],
    ['+1', /"\+"/, /a value/],
    ['NaN', /"N"/, /a value/],
    ['{} {}', /"{" at line 1, column 4/, /the end of the text after an empty object/],
    ['[', /the end of the text/, /a value/],
  ])('%j', (text, found, expected) => {
    const said = refusal(readJson(text));
    expect(said).toEqual({ place: '', found: expect.stringMatching(found), expected: expect.stringMatching(expected) });
  });

  test('exactly what JSON.parse refuses, but for fields that stand twice', () => {
    const bits = [
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"a"',
      '"b"',
      '1',
      '-',
      '.5',
      'e2',
      'true',
      'null',
      ' ',
      '\n',
      '"',
      '\\',
    ];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...bits), { maxLength: 9 }), (parts) => {
        const text = parts.join('');
        const reading = readJson(text);
        const twice = !reading.ok && reading.refusal.expected === 'each field once';
        if (!twice) expect(reading.ok).toBe(parses(text));
      }),
      { seed: 3, numRuns: 5000 },
    );
  });
});

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('a field that stands twice', () => {
  test.each([
    ['{"a":1,"a":1}', '/a', /"a" a second time at line 1, column 8/],
    ['{"a":[0,{"b":1,"\\u0062":2}]}', '/a/1/b', /"b" a second time at line 1, column 16/],
    ['{"a/b~":1,"a/b~":2}', '/a~1b~0', /second time/],
    ['{"__proto__":1,"__proto__":2}', '/__proto__', /second time/],
    ['{"toString":1,"toString":2}', '/toString', /second time/],
    [`{"${'k'.repeat(65)}":1,"${'k'.repeat(65)}":2}`, '', /"k{40}…" a second time/],
  ])('%s', (text, place, found) => {
    expect(refusal(readJson(text))).toEqual({
      place,
      found: expect.stringMatching(found),
      expected: 'each field once',
    });
  });
});

describe('the text of a rig', () => {
  const text = JSON.stringify(quay);
  test('reads to what the value reads to', () => {
    expect(mustRead(readRigText(text))).toEqual(quay);
  });

  test('is at most 1 MiB of UTF-8', () => {
    const padded = (bytes: number) => text + ' '.repeat(bytes - text.length);
    mustRead(readRigText(padded(1024 * 1024)));
    const said = refusal(readRigText(padded(1024 * 1024 + 1)));
    expect(said).toEqual({
      place: '',
      found: 'a text of 1048577 bytes or more',
      expected: 'at most 1048576 bytes (1 MiB)',
    });
  });

  test('is counted in bytes, not in characters', () => {
    const titled = (title: string) => JSON.stringify({ ...quay, title });
    mustRead(readRigText(titled('é'.repeat(500_000))));
    expect(refusal(readRigText(titled('é'.repeat(525_000)))).expected).toMatch(/1 MiB/);
    expect(refusal(readRigText(titled('🪁'.repeat(262_144)))).expected).toMatch(/1 MiB/);
  });

  test('may hold a number too large, which is then not finite', () => {
    const said = refusal(readRigText(text.replace('"length":0.2', '"length":1e999')));
    expect(said).toEqual({
      place: '/bones/5/rest/length',
      found: 'infinity',
      expected: expect.stringMatching(/above 0/),
    });
  });
});
