/** Numbers from outside for limit. Its degenerate cases stand in ../degenerate. */
import { expect, test } from 'vitest';
import type { LimitLink, Vec3 } from '../../../src/solver/index.ts';
import { expectClose } from '../../support/close.ts';
import { baseOf, bone, column, columns, rigOf } from '../degenerate/build.ts';
import { solveRig } from '../solveRig.ts';

const limited = (link: Omit<LimitLink, 'kind' | 'name'>, angles: Vec3, move: Vec3 = [0, 0, 0]) =>
  solveRig(rigOf([bone('eye', { at: [0, 1, 0], links: [{ name: 'hold', kind: 'limit', ...link }] })]), {
    bones: { eye: { turn: { angles }, move } },
  });
const sinDeg = (deg: number) => Math.sin((deg * Math.PI) / 180);
const cosDeg = (deg: number) => Math.cos((deg * Math.PI) / 180);

// yaw = atan2(x, z), positive to the left, as in VRMC_vrm 1.0 lookAt; pitch is positive upwards here (VRM's is not).
test('yaw and pitch are held apart: 50° left and 30° up held to 35° and 20°', () => {
  // Customary rotation of the eye, LaValle, Virtual Reality (2016), fig. 5.21: 35° aside, 20° up, 25° down.
  const aside = { yaw: [-35, 35], pitch: [-25, 20] } as const;
  // Yaw about y, then pitch about the turned x: y·x order is angles of a turn Ry·Rx.
  const rig = rigOf([bone('eye', { turnOrder: 'yxz', links: [{ name: 'hold', kind: 'limit', ...aside }] })]);
  const z = column(solveRig(rig, { bones: { eye: { turn: { angles: [-30, 50, 0] } } } }), 'eye', 'z');
  expectClose(z, [cosDeg(20) * sinDeg(35), sinDeg(20), cosDeg(20) * cosDeg(35)], 1e-15);
});

test('a cone keeps the direction aside', () => {
  const z = column(limited({ cone: 30 }, [0, 70, 0]), 'eye', 'z');
  expectClose(z, [sinDeg(30), 0, cosDeg(30)], 1e-15);
});

// URDF's revolute limit clamps an angle; check value F14.
test('a twist of 172° is held to 89.95°', () => {
  const x = column(limited({ twist: [-89.95, 89.95] }, [0, 0, 172]), 'eye', 'x');
  expectClose(x, [cosDeg(89.95), sinDeg(89.95), 0], 1e-15);
});

test('what is within bounds stays to the bit', () => {
  const free = limited({ twist: [-180, 180] }, [10, 20, 30], [0.1, 0.2, 0.3]);
  const bounded = limited(
    { yaw: [-90, 90], pitch: [-45, 45], twist: [-90, 90], cone: 60, move: { min: [-1, -1, -1], max: [1, 1, 1] } },
    [10, 20, 30],
    [0.1, 0.2, 0.3],
  );
  expect(columns(bounded, 'eye')).toEqual(columns(free, 'eye'));
  expect(baseOf(bounded, 'eye')).toEqual(baseOf(free, 'eye'));
});

test('a move is held in the rest frame, part way at part weight', () => {
  const move = { min: [0, 0, -0.1], max: [0, 0, 0.2] } as const;
  expectClose(baseOf(limited({ move }, [0, 0, 0], [0.3, 0.3, 0.5]), 'eye'), [0, 1, 0.2], 1e-15);
  expectClose(baseOf(limited({ move, weight: 0.5 }, [0, 0, 0], [0.3, 0.3, 0.5]), 'eye'), [0.15, 1.15, 0.35], 1e-15);
});
