import { describe, expect, test } from 'vitest';
import { expectClose } from '../support/close.ts';
import { moved, rigOf, solved } from './solved.ts';

const folder = 'content/lessons/3.4-two-eyes-one-holder';
const twins = rigOf(`${folder}/twin-vanes.json`);
const outOfLine = rigOf(`${folder}/out-of-line.json`);
const toad = rigOf(`${folder}/toad-eyes.json`);
/** The holder turned about y by the angle whose sine is 0.6: half of it has sine 1/√10. */
const TURNED = { bones: { wind: { turn: [0, 1 / Math.sqrt(10), 0, 3 / Math.sqrt(10)] as const } } };

// Check values: the arithmetic on the page, worked by hand from right triangles.
describe('lesson 3.4 says what the solver does', () => {
  test('a holder that is moved keeps the lines parallel', () => {
    const { axis, aside } = solved(twins, moved('wind', 0.9));
    expectClose(axis('vane_left', 'z'), [0.6, 0, 0.8], 1e-15);
    expectClose(axis('vane_right', 'z'), [0.6, 0, 0.8], 1e-15);
    expectClose(aside('vane_left'), 36.87, 5e-3);
  });

  test('a holder pushed along the line turns nothing', () => {
    expectClose(solved(twins, moved('wind', 0, 0, 0.7)).axis('vane_left', 'z'), [0, 0, 1], 1e-15);
  });

  test('a turned holder takes the targets and the lines where the worked example says', () => {
    const { base, aside } = solved(twins, TURNED);
    expectClose(base('wind_left'), [0.32, 1.5, 0.96], 1e-15);
    expectClose(base('wind_right'), [-0.32, 1.5, 1.44], 1e-15);
    expectClose(aside('vane_left'), -4.76, 5e-3);
    expectClose(aside('vane_right'), 3.18, 5e-3);
    expectClose(meetingZ(twins, TURNED), 5.76, 1e-12);
  });

  test.each([
    [0.6, 4.8],
    [0, 1.2],
    [0.9, (1.2 * 0.8) / (0.8 - 0.9)],
  ])('targets %d m apart meet where Z = D·w/(w − s) says', (s, z) => {
    const inward = 0.4 - s / 2;
    const pose = { bones: { wind_left: { move: [-inward, 0, 0] }, wind_right: { move: [inward, 0, 0] } } } as const;
    expectClose(meetingZ(twins, pose), z, 1e-12);
  });

  test('one target turns one vane, and turning a target turns none', () => {
    const { axis } = solved(twins, moved('wind_left', 0.3));
    expect(axis('vane_right', 'z')).toEqual([0, 0, 1]);
    expect(axis('vane_left', 'z')[0]).toBeGreaterThan(0.2);
    const spun = solved(twins, { bones: { wind_left: { turn: [0, 0.6, 0, 0.8] } } });
    expect(spun.axis('vane_left', 'z')).toEqual([0, 0, 1]);
  });

  test('targets 10 cm too far in make the vanes flinch by 4.76° and 25 mm', () => {
    const { aside, axis } = solved(outOfLine, {});
    expectClose(aside('vane_left'), -4.76, 5e-3);
    expectClose(aside('vane_right'), 4.76, 5e-3);
    const [x, , z] = axis('vane_left', 'z');
    expectClose(300 * Math.hypot(x!, z! - 1), 25, 0.1);
  });

  test('Toad’s eyes turn as the answer says', () => {
    const rest = solved(toad, {});
    expectClose(rest.axis('eye_left', 'z'), [0.6, 0, 0.8], 1e-15);
    const { aside } = solved(toad, moved('gaze', 0.3));
    expectClose(aside('eye_left'), 56.31, 5e-3);
    expectClose(aside('eye_left') - rest.aside('eye_left'), 19.44, 5e-3);
    expectClose(aside('eye_right'), 0, 1e-12);
    expectClose(aside('eye_right') - rest.aside('eye_right'), 36.87, 5e-3);
    // The slip: targets straight ahead of each eye.
    const ahead = { bones: { gaze_left: { move: [-0.3, 0, 0] }, gaze_right: { move: [0.3, 0, 0] } } } as const;
    expectClose(solved(toad, ahead).aside('eye_left') - rest.aside('eye_left'), -36.87, 5e-3);
  });
});

/** How far ahead of the vanes their lines meet, seen from above. */
function meetingZ(rig: typeof twins, pose: Parameters<typeof solved>[1]): number {
  const { axis } = solved(rig, pose);
  const slope = (bone: string) => axis(bone, 'z')[0]! / axis(bone, 'z')[2]!;
  return 0.8 / (slope('vane_right') - slope('vane_left'));
}
