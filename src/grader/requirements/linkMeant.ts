import type { Link, Point } from '../../solver/document/rig.ts';
import { axisVector } from '../../solver/document/vectors.ts';

/** A link with every default written out and its axes as vectors, so that two ways of writing it are alike. */
export function linkMeant(link: Link): Link {
  const whole = { weight: 1, ...link };
  if (whole.kind === 'follow') return { offset: 'none', ...whole, channels: inOneOrder(whole.channels) };
  if (whole.kind === 'aim') return { ...whole, axis: axisVector(whole.axis ?? '+z'), target: pointMeant(whole.target) };
  if (whole.kind === 'span') return { sides: 'free', ...whole, target: pointMeant(whole.target) };
  if (whole.kind !== 'reach') return whole;
  return { ...whole, target: pointMeant(whole.target), ...(whole.pole && { pole: pointMeant(whole.pole) }) };
}

const ALL = ['move', 'turn', 'size'] as const;
const inOneOrder = (channels: readonly string[] = ALL) => ALL.filter((channel) => channels.includes(channel));
const pointMeant = (point: Point): Point => ({ at: 0, ...point });
