import { expect, test } from 'vitest';
import { type SideWords, sideOf, swapSide } from '../../../src/solver/index.ts';
import { onSide } from '../../../src/solver/mirror/sides.ts';

/** Joint names of ISO/IEC 19774 begin with l_ and r_. */
const FIRST: SideWords = { left: 'l', right: 'r', at: 'first' };

test.each([
  ['eye_left', 'left', 'eye_right'],
  ['brow_2_right', 'right', 'brow_2_left'],
  ['left', 'left', 'right'],
  ['_right', 'right', '_left'],
  ['jaw', null, 'jaw'],
  ['leftover', null, 'leftover'],
  ['left_over', null, 'left_over'],
  ['eyeleft', null, 'eyeleft'],
  ['eye-left', null, 'eye-left'],
  ['eye_Left', null, 'eye_Left'],
  ['left_right', 'right', 'left_left'],
])('%s is %s, swapped %s', (name, side, swapped) => {
  expect(sideOf(name)).toBe(side);
  expect(swapSide(name)).toBe(swapped);
  expect(swapSide(swapped)).toBe(name);
});

test.each([
  ['l_elbow', 'left', 'r_elbow'],
  ['r_elbow', 'right', 'l_elbow'],
  ['l', 'left', 'r'],
  ['elbow_l', null, 'elbow_l'],
  ['lintel', null, 'lintel'],
])('with the side word first, %s is %s', (name, side, swapped) => {
  expect(sideOf(name, FIRST)).toBe(side);
  expect(swapSide(name, FIRST)).toBe(swapped);
});

test('a name is given a side', () => {
  expect(onSide('let_go', 'left')).toBe('let_go_left');
  expect(onSide('let_go', 'right', FIRST)).toBe('r_let_go');
});
