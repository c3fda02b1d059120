import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { TurnOrder, Vec3 } from '../../../src/solver/index.ts';
import { anglesOf, turnOf } from '../../../src/workbench/pose/angles.ts';

const ORDERS: TurnOrder[] = ['xyz', 'xzy', 'yxz', 'yzx', 'zxy', 'zyx'];
const degrees = fc.double({ min: -180, max: 180, noNaN: true });

test.each(ORDERS)('angles read from a turn make the turn again, in the order %s', (order) => {
  fc.assert(
    fc.property(degrees, degrees, degrees, (x, y, z) => {
      const turn = turnOf([x, y, z], order);
      const again = turnOf(anglesOf(turn, order), order);
      const same = Math.abs(turn.reduce((sum, value, i) => sum + value * again[i]!, 0));
      expect(same).toBeGreaterThan(1 - 1e-9);
    }),
  );
});

test.each(ORDERS)('angles within the middle one’s quarter turn are read as they were put, in the order %s', (order) => {
  const angles: Vec3 = [12, -34, 56];
  expect(anglesOf(turnOf(angles, order), order).map((angle) => Number(angle.toFixed(6)))).toEqual(angles);
});

test('a middle angle of a right angle still makes the turn', () => {
  for (const order of ORDERS) {
    const angles: [number, number, number] = [20, 20, 20];
    angles['xyz'.indexOf(order[1]!)] = 90;
    const turn = turnOf(angles, order);
    const again = turnOf(anglesOf(turn, order), order);
    expect(Math.abs(turn.reduce((sum, value, i) => sum + value * again[i]!, 0))).toBeGreaterThan(1 - 1e-9);
  }
});
