import type { SpanLink } from '../../../src/solver/document/rig.ts';
import { meanSize } from '../restFrame.ts';
import type { Setting } from '../setting.ts';
import { blend, size, subtract, unit, unitZ, type Vector } from '../vector.ts';
import { putTogether, type World } from '../world.ts';
import { aimed, isNear } from './aiming.ts';
import { takeApart } from './takeApart.ts';

export function span(link: SpanLink, before: World, setting: Setting): World {
  const g = meanSize(setting.frame.f);
  const offset = subtract(setting.pointOf(link.target), before.base);
  if (g < 1e-9) setting.raise('flat');
  if (isNear(offset)) setting.raise('aim-undefined');
  if (g < 1e-9 || isNear(offset)) return before;

  const own = takeApart(setting, before);
  return putTogether({
    p: own.p,
    q: aimed(own.q, unitZ, unit(offset), setting.weight),
    s: blend(own.s, fullSize(link, size(offset), g, setting.bone.rest.length), setting.weight),
  });
}

/** (g·c, g·c, g·r·restLength/length), r bounded, c = 1 or 1/√r. */
function fullSize(link: SpanLink, distance: number, g: number, length: number): Vector {
  const restLength = link.restLength ?? length;
  const unbounded = distance / (restLength * g);
  const r = Math.min(Math.max(unbounded, link.least ?? 0), link.most ?? Number.POSITIVE_INFINITY);
  const c = link.sides === 'volume' ? 1 / Math.sqrt(r) : 1;
  return [g * c, g * c, (g * r * restLength) / length];
}
