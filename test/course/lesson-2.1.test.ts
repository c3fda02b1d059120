import { describe, test } from 'vitest';
import { expectClose } from '../support/close.ts';
import { rigOf, solved } from './solved.ts';

const folder = 'content/lessons/2.1-why-a-bone-in-between';
const lid = rigOf(`${folder}/bellows-lid.json`);
const past = rigOf(`${folder}/past-the-seat.json`);
const HINGE = [0, 0.4, -0.2];
/** The turn up whose sine is 0.6 and whose cosine is 0.8. */
const OPENED = [-Math.sqrt(0.1), 0, 0, Math.sqrt(0.9)] as const;

const opened = (between: number) =>
  solved(lid, { bones: { lift: { turn: [...OPENED] } }, switches: { 'lift.between': between } });
const from = (point: readonly number[], place: readonly number[]) => point.map((x, i) => x - place[i]!);

// Check values: the arithmetic on the page, worked by hand; chords with Math.sin.
describe('lesson 2.1 says what the solver does', () => {
  test('with a helper in the hinge the edge stays and the lid’s base swings', () => {
    expectClose(from(opened(1).base('eyelet'), HINGE), [0, 0, 0], 1e-12);
    expectClose(from(opened(1).base('lid'), HINGE), [0, 0.12, 0.16], 1e-12);
  });

  test('without, the edge goes down by the chord and the turn is the same', () => {
    const off = from(opened(0).base('eyelet'), HINGE);
    expectClose(off, [0, -0.12, 0.04], 1e-12);
    expectClose(Math.hypot(...off), 0.126, 5e-4);
    expectClose(Math.hypot(...off), 2 * 0.2 * Math.sin(Math.atan2(0.6, 0.8) / 2), 1e-12);
    expectClose(opened(0).axis('lid', 'z'), opened(1).axis('lid', 'z'), 1e-12);
  });

  test('at rest the helper moves nothing', () => {
    expectClose(solved(lid, {}).base('lid'), [0, 0.4, 0], 1e-12);
  });

  test('past its seat the skull leaves the joint by 42 cm and knows no stop', () => {
    const { base, axis } = solved(past, { bones: { nod: { turn: { angles: [50, 0, 0] } } } });
    expectClose(Math.hypot(...from(base('skull'), [0, 1.5, 0])), 2 * 0.5 * Math.sin((25 * Math.PI) / 180), 1e-12);
    expectClose(2 * 0.5 * Math.sin((25 * Math.PI) / 180), 0.42, 5e-3);
    const downDeg = (bone: string) => (-Math.asin(axis(bone, 'z')[1]!) * 180) / Math.PI;
    expectClose([downDeg('skull'), downDeg('seat')], [50, 30], 1e-9);
    expectClose(base('seat'), [0, 1.5, 0], 1e-12);
  });

  test('the flag’s edge comes off by 42.4 cm', () => {
    expectClose(2 * 30 * Math.sin(Math.PI / 4), 42.4, 0.05);
  });
});
