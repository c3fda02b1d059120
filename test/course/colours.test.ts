import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { contrast } from './contrast.ts';

const sheet = readFileSync('src/styles/tokens.css', 'utf8');
const pairs = [...sheet.matchAll(/--(\w+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/g)];
const day = Object.fromEntries(pairs.map(([, name, light]) => [name, light!]));
const night = Object.fromEntries(pairs.map(([, name, , dark]) => [name, dark!]));

/** WCAG 2.2, 1.4.3 Contrast (Minimum): text. */
const TEXT = 4.5;
/** WCAG 2.2, 1.4.11 Non-text Contrast: outlines of what can be touched. */
const OUTLINE = 3;
const texts = ['ink', 'faint', 'madder', 'verdigris', 'indigo', 'ochre'];

// Check values: black on white is 21 by definition; #777777 on white is 4.478 (WebAIM's contrast checker rounds
// it to 4.48) and so just fails, #767676 is 4.542 and just passes. From memory, recomputed by hand with the formula.
test('the contrast formula', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
  expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.478, 3);
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.542, 3);
});

test('the colours by day are those of the design', () => {
  expect(day).toMatchObject({
    paper: '#fbf8f1',
    ink: '#1d2733',
    madder: '#9c2f3b',
    verdigris: '#0b6557',
    indigo: '#2d4a8a',
    ochre: '#7a5200',
  });
});

describe.each([
  ['day', day],
  ['night', night],
])('by %s', (_, colours) => {
  test.each(texts)('%s can be read on paper and on a leaf', (name) => {
    expect(contrast(colours[name]!, colours.paper!)).toBeGreaterThanOrEqual(TEXT);
    expect(contrast(colours[name]!, colours.leaf!)).toBeGreaterThanOrEqual(TEXT);
  });
  test('edges can be seen on both', () => {
    expect(contrast(colours.edge!, colours.paper!)).toBeGreaterThanOrEqual(OUTLINE);
    expect(contrast(colours.edge!, colours.leaf!)).toBeGreaterThanOrEqual(OUTLINE);
  });
});

test('each colour is registered with its value by day', () => {
  for (const [name, value] of Object.entries(day)) {
    expect(sheet).toMatch(new RegExp(`@property --${name} {[^}]*initial-value: ${value};`));
  }
});
