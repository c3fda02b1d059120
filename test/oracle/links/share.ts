import type { ShareLink } from '../../../src/solver/document/rig.ts';
import { type Matrix, product, transposed } from '../matrix.ts';
import { toQuaternion, turnAbout, wrappedRad } from '../rotation.ts';
import type { Setting } from '../setting.ts';
import { unitZ } from '../vector.ts';
import { orient, orientation, putTogether, type World } from '../world.ts';
import { takeApart } from './takeApart.ts';

export function share(link: ShareLink, fraction: number, before: World, setting: Setting): World {
  const own = takeApart(setting, before);
  const frame = orientation(setting.frameOf(link.source).fq);
  if (frame.flat) setting.raise('flat');
  const turn = product(transposed(frame.rotation), orient(setting.worldOf(link.source).a));
  const twist = twistRad(turn, 2);
  if (twist === undefined) setting.raise('twist-undefined');
  const angleRad = setting.weight * fraction * (twist ?? 0);
  return putTogether({ ...own, q: product(own.q, turnAbout(unitZ, angleRad)) });
}

/** 2·atan2(q[axis], q.w) in (−180°, 180°]; none where both are under 1e-9. */
export function twistRad(turn: Matrix, axis: 0 | 1 | 2): number | undefined {
  const q = toQuaternion(turn);
  if (Math.abs(q[axis]) < 1e-9 && Math.abs(q[3]) < 1e-9) return undefined;
  return wrappedRad(2 * Math.atan2(q[axis], q[3]));
}
