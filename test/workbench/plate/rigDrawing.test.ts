import { expect, test } from 'vitest';
import type { Bone, Rig } from '../../../src/solver/index.ts';
import { changeWords } from '../../../src/workbench/plate/PoseChange.tsx';
import { poseRows } from '../../../src/workbench/plate/PoseTable.tsx';
import { rigDrawing } from '../../../src/workbench/plate/rigDrawing.ts';
import { ready, solved } from '../../../src/workbench/pose/solved.ts';
import { TWIN_VANES } from '../support/twinVanes.ts';

function posed(rig: Rig, pose = {}) {
  const made = ready(rig);
  if (!made.ok) throw new Error(made.cycle.join());
  return solved(made.ready, pose);
}
const how = { pixel: 0.005, size: 1, chosen: null };
const one = (bone: Partial<Bone>): Rig => ({
  format: 'counterpose/rig',
  version: 1,
  bones: [
    { name: 'reed', parent: null, role: 'helper', rest: { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 0.4 }, ...bone },
  ],
});
const strokesOf = (rig: Rig, chosen: string | null = null) =>
  rigDrawing(posed(rig), { ...how, chosen }).figures[0]!.strokes;

test('each role has a shape of its own, not only a colour', () => {
  const looks = (['skin', 'helper', 'control', 'guide'] as const).map((role) => {
    const [figure] = rigDrawing(posed(one({ role })), how).figures;
    return JSON.stringify([figure!.leaves.length, figure!.strokes.map(({ dash, points }) => [dash, points.length])]);
  });
  expect(new Set(looks).size).toBe(4);
});

test('what is chosen is outlined twice and keeps its colours', () => {
  const [plain, chosen] = [strokesOf(one({})), strokesOf(one({}), 'reed')];
  expect(chosen.length).toBe(plain.length + 2);
  expect(chosen.slice(0, plain.length)).toEqual(plain);
});

test('a guide has a tick for each length passed, and tells its own', () => {
  const rig = one({ name: 'tape', role: 'guide', rest: { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 0.42 } });
  const { figures, labels } = rigDrawing(posed(rig), how);
  // 0.05 m is the least round step wider than five pixels of 0.005 m: eight of them in 0.42 m.
  expect(figures[0]!.strokes).toHaveLength(1 + 8);
  expect(labels[0]!.text).toBe('tape 0.42 m');
});

test('an eye shows a pupil and a gaze line', () => {
  const eye = strokesOf(one({ name: 'eye_left', role: 'skin' }));
  expect(eye.some(({ dash, points }) => dash === 'fine' && points.length === 2)).toBe(true);
  expect(eye.filter(({ points }) => points.length > 20)).toHaveLength(2);
});

test('the pose table tells where each bone stands, how it is turned and how long it is', () => {
  const rig = one({ rest: { base: [1, 2, 3], turn: [0, Math.SQRT1_2, 0, Math.SQRT1_2], length: 0.4 } });
  expect(poseRows(posed(rig))).toEqual([{ name: 'reed', numbers: ['1', '2', '3', '0', '90', '0', '0.4'] }]);
});

test('what has moved is told, and a long list is cut short', () => {
  const [before, after] = [posed(TWIN_VANES), posed(TWIN_VANES, { bones: { wind: { move: [0.3, 0, 0] } } })];
  const words = changeWords(poseRows(before), poseRows(after));
  expect(words).toMatch(/^wind: base 0\.3, 1\.5, 0\.6, turn 0, 0, 0, length 0\.05\. wind_left: /);
  expect(words).not.toContain('post');
  expect(words).toMatch(/1 more moved\.$/);
});
