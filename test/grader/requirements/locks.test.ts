import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const quay = (locks: object) => rigOf([bone('kite', null, [0, 0, 2], { locks })]);
const asked = { kind: 'locks', bone: 'kite', locked: ['turn.x', 'turn.z'], open: ['move.x'], allowed: 0 };

test('each channel that is open or locked against what is asked counts', () => {
  const exercise = exerciseOf(quay({}), [], asked);
  expectMissed(found(exercise), 2);
  expectMissed(found(exercise, { rig: quay({ move: [true, false, false] }) }), 3);
  expectMet(found(exercise, { rig: quay({ turn: [true, false, true] }) }), 0);
});
