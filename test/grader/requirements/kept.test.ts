import { expect, test } from 'vitest';
import { kept as keptAsGiven } from '../../../src/grader/requirements/kept.ts';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const watch = { name: 'watch', kind: 'aim', target: { bone: 'kite' } };
const quay = (more: object) =>
  rigOf([bone('kite', null, [0, 0, 2]), bone('vane', null, [0, 0, 0], { links: [watch], ...more })]);
const kept = [{ bone: 'vane', fields: ['parent', 'role', 'links', 'locks'] }];
const exercise = exerciseOf(quay({}), [], { kind: 'kept', allowed: 0 }, { kept });

test('two kept fields that differ are two', () => {
  expectMet(found(exercise), 0);
  expectMissed(found(exercise, { rig: quay({ role: 'skin', parent: 'kite' }) }), 2);
});

test('a link written out in full is the same; one beside it is free; another weight is not', () => {
  const whole = { ...watch, weight: 1, axis: [0, 0, 1], target: { bone: 'kite', at: 0 } };
  expectMet(
    found(exercise, { rig: quay({ links: [whole, { name: 'more', kind: 'follow', source: 'kite', weight: 0 }] }) }),
    0,
  );
  expectMissed(found(exercise, { rig: quay({ links: [{ ...watch, weight: 0.5 }] }) }), 1);
});

test('locks that lock nothing are no locks', () => {
  expectMet(found(exercise, { rig: quay({ locks: { move: [false, false, false] } }) }), 0);
});

test('what is missed is called what the page calls it', () => {
  const places = ['attach of vane', 'inherits of vane', 'turnOrder of vane', 'role of vane', 'kite is gone'];
  expect(keptAsGiven.missed({} as never, { places } as never)).toBe(
    'What was given should stay as it was: attachment of vane, what vane takes of its parent, turn order of vane, role of vane, kite is gone.',
  );
});
