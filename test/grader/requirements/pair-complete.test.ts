import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const left = bone('vane_left', null, [1, 0, 0]);
const right = (more: object) => bone('vane_right', null, [-1, 0, 0], more);

test('a side without its other, or with another role, is one', () => {
  const exercise = exerciseOf(rigOf([left, right({})]), [], { kind: 'pair-complete', allowed: 0 });
  expectMet(found(exercise), 0);
  expectMissed(found(exercise, { rig: rigOf([left]) }), 1);
  expectMissed(found(exercise, { rig: rigOf([left, right({ role: 'skin' })]) }), 1);
});

test('sides that are built differently are a pair all the same', () => {
  const exercise = exerciseOf(rigOf([left, right({})]), [], { kind: 'pair-complete', allowed: 0 });
  const links = [{ name: 'along', kind: 'follow', source: 'vane_left', channels: ['turn'] }];
  expectMet(found(exercise, { rig: rigOf([left, right({ links })]) }), 0);
});
