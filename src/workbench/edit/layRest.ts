import type { Quat, Rest, Vec3 } from '../../solver/document/rig.ts';
import { times } from '../pose/angles.ts';
import { boneOf, type Draft, type Edit } from './draft.ts';
import { setRest, tipOf } from './setRest.ts';

/** Lays a bone just as another one lies: base, turn and length (its base stays where it is attached). */
export function layLike(name: string, other: string): Edit {
  return laid(name, `lay ${name} like ${other}`, (own, rests) => {
    const like = rests(other) ?? own.rest;
    return own.attach === 'tip' ? { ...like, base: own.rest.base } : like;
  });
}

/** Moves a bone's base onto an end of another: 0 its base, 1 its tip. */
export function standOn(name: string, other: string, end: 0 | 1): Edit {
  return laid(name, `put the base of ${name} on ${other}`, (_, rests) => {
    const like = rests(other);
    return like ? { base: endOf(like, end) } : {};
  });
}

/** Turns and stretches a bone by the shortest way so that its tip lies on an end of another. */
export function pointTip(name: string, other: string, end: 0 | 1): Edit {
  return laid(name, `put the tip of ${name} on ${other}`, (own, rests) => {
    const like = rests(other);
    return like ? reaching(own.rest, endOf(like, end)) : {};
  });
}

type Lay = (own: { rest: Rest; attach?: string }, rests: (bone: string) => Rest | undefined) => Partial<Rest>;

function laid(name: string, says: string, lay: Lay): Edit {
  return {
    says,
    apply: (draft: Draft): Draft => {
      const own = boneOf(draft, name);
      if (!own) return draft;
      const change = lay(own, (bone) => boneOf(draft, bone)?.rest);
      return setRest(name, change, 'rest').apply(draft);
    },
  };
}

function endOf(rest: Rest, end: 0 | 1): Vec3 {
  return end === 1 ? tipOf(rest) : rest.base;
}

function reaching(rest: Rest, to: Vec3): Partial<Rest> {
  const d: Vec3 = [to[0] - rest.base[0], to[1] - rest.base[1], to[2] - rest.base[2]];
  const length = Math.sqrt(d[0] ** 2 + d[1] ** 2 + d[2] ** 2);
  if (length < 1e-9) return {};
  const tip = tipOf(rest);
  const from = tip.map((value, i) => (value - rest.base[i]!) / rest.length) as unknown as Vec3;
  const along = d.map((value) => value / length) as unknown as Vec3;
  return { turn: unit(times(shortest(from, along), rest.turn)), length };
}

/** The shortest turn from one direction to another; half a turn about an axis across where they are opposite. */
function shortest(a: Vec3, b: Vec3): Quat {
  const w = 1 + a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  if (w < 1e-9) return Math.abs(a[0]) < 0.9 ? unit([0, a[2], -a[1], 0]) : unit([-a[2], 0, a[0], 0]);
  return unit([a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0], w]);
}

function unit(q: Quat): Quat {
  const length = Math.sqrt(q.reduce((sum, value) => sum + value * value, 0));
  return q.map((value) => value / length) as unknown as Quat;
}
