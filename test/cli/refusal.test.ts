import { describe, expect, test } from 'vitest';
import { accept, printable, refusalLine, Unusable } from '../../src/cli/refusal.ts';

const refusal = { place: '/bones/2/rest/length', found: '-0.1', expected: 'a number above 0' };

describe('a refusal', () => {
  test('says where, what was found and what was expected', () => {
    expect(refusalLine('ferry_crane.json', refusal)).toBe(
      'ferry_crane.json, at /bones/2/rest/length: found -0.1, expected a number above 0',
    );
  });

  test('of a whole document has no place', () => {
    expect(refusalLine('ferry_crane.json', { ...refusal, place: '' })).toBe(
      'ferry_crane.json: found -0.1, expected a number above 0',
    );
  });

  test('stays on one line and steers no terminal, whatever stands in the document', () => {
    const line = refusalLine('ferry\ncrane.json', { ...refusal, found: '"\u001b[2J\u202e\u2028\u0007"' });
    expect(line).toContain('ferry\\u000acrane.json');
    expect(line).toContain('found "\\u001b[2J\\u202e\\u2028\\u0007"');
  });

  test('of what could be read is none', () => {
    expect(accept('ferry_crane.json', { ok: true, value: 3 })).toBe(3);
    expect(() => accept('ferry_crane.json', { ok: false, refusal })).toThrow(Unusable);
  });

  test('leaves other letters as they are', () => {
    expect(printable('Möwe → 鷺 🦦')).toBe('Möwe → 鷺 🦦');
  });
});
