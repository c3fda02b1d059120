import { describe, test } from 'vitest';
import type { Link, Pose, Quat, Rig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { rigOf, solved } from './solved.ts';

const lamps = rigOf('content/lessons/5.4-handing-over/two-lamps.json');
const STEPS = [0, 0.25, 0.5, 0.75, 1];

/** Both lamps 0.8 m up by hand: their own +z is up. */
const raised = (s: number): Pose => ({
  bones: { lamp_fading: { move: [0, 0, 0.8] }, lamp_handed: { move: [0, 0, 0.8] } },
  switches: { 'quay.together': s },
});

const root = (name: string, links: readonly Link[] = []): Rig['bones'][number] => ({
  name,
  parent: null,
  role: 'helper',
  rest: { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 0.2 },
  links,
});
const following = (weights: readonly number[]): Rig => ({
  format: 'counterpose/rig',
  version: 1,
  bones: [
    ...weights.map((_, i) => root(`ask_${i}`)),
    root(
      'head',
      weights.map((weight, i) => ({
        name: `link_${i}`,
        kind: 'follow',
        source: `ask_${i}`,
        channels: ['turn'],
        weight,
      })),
    ),
  ],
});
const about = (axis: 0 | 1 | 2, angleDeg: number): Quat => {
  const half = (angleDeg * Math.PI) / 360;
  const turn: [number, number, number, number] = [0, 0, 0, Math.cos(half)];
  turn[axis] = Math.sin(half);
  return turn;
};
const turned = (turns: Record<string, Quat>): Pose => ({
  bones: Object.fromEntries(Object.entries(turns).map(([name, turn]) => [name, { turn }])),
});

// Check values: the arithmetic on the page. Slerp by weight is exact in the angle (glTF 2.0, appendix C).
describe('lesson 5.4 says what the solver does', () => {
  test.each([
    [0, 0, 0],
    [0.25, 0.0625, 0.15],
    [0.5, 0.25, 0.2],
    [0.75, 0.5625, 0.15],
    [1, 1, 0],
  ])('the table: at %d the fading lamp is at (%d, %d)', (s, asideM, upM) => {
    const { base } = solved(lamps, raised(s));
    expectClose(base('lamp_fading').slice(0, 2), [asideM, upM], 1e-15);
    expectClose(base('lamp_handed').slice(0, 2), [s, 0], 1e-15);
  });

  test('about one line s(1 − s) of the own turn is left, a quarter half way', () => {
    for (const s of STEPS) {
      const pose = turned({ head: about(1, 40), ask_0: about(1, 60), ask_1: about(1, -20) });
      const expected = s * (1 - s) * 40 + s * s * 60 + (1 - s) * -20;
      expectClose(solved(following([s, 1 - s]), pose).aside('head'), expected, 1e-12);
      expectClose(solved(following([1, 1 - s]), pose).aside('head'), s * 60 + (1 - s) * -20, 1e-12);
    }
  });

  test('with the first whole the own turn leaves no trace, about whatever axes', () => {
    const asked = { ask_0: about(0, 50), ask_1: about(1, 70) };
    for (const w of STEPS) {
      const own = solved(following([1, w]), turned({ ...asked, head: about(2, 80) }));
      const none = solved(following([1, w]), turned(asked));
      for (const letter of ['x', 'y', 'z'] as const)
        expectClose(own.axis('head', letter), none.axis('head', letter), 1e-14);
    }
  });

  test('about different lines the sum of small turns is near, and not exact', () => {
    const pose = turned({ head: about(1, 10), ask_0: about(0, 10), ask_1: about(2, 10) });
    const { axis } = solved(following([0.5, 0.5]), pose);
    const z = axis('head', 'z');
    const asideDeg = (Math.atan2(z[0]!, z[2]!) * 180) / Math.PI;
    expectClose(asideDeg, 2.61, 5e-3);
    expectClose(solved(following([0.5, 0.5]), turned({ head: about(1, 10) })).aside('head'), 2.5, 1e-12);
  });

  test('the Heron keeps 5° after three halves, and nothing where one is whole', () => {
    const pose = turned({ head: about(1, 40) });
    expectClose(solved(following([0.5, 0.5, 0.5]), pose).aside('head'), 5, 1e-12);
    expectClose(solved(following([1, 0.5, 0.5]), pose).aside('head'), 0, 1e-12);
    expectClose(solved(following([0.5, 0.5, 1]), pose).aside('head'), 0, 1e-12);
  });
});
