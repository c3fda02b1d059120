import type { Reader } from '../../solver/document/reader.ts';
import type { Axis } from '../../solver/document/rig.ts';
import { needed, record, shapes } from '../../solver/document/structures.ts';
import { oneOf, text } from '../../solver/document/values.ts';
import { axis as axisReader } from '../../solver/document/vectors.ts';
import type { Where } from '../exercise/inputs.ts';
import { angleBetweenDeg, axisOf, pointOf, turnBetweenDeg } from '../measure/frame.ts';
import { opposedX } from '../requirements/reflectedAxis.ts';
import { where } from '../requirements/requirement.ts';
import { lengthOf, type Subject, worldOffset } from '../subject.ts';

/** A number that can be read off a posed rig. */
export type Gauge =
  /** A coordinate of a point in rig space, centimetres. */
  | { coordinate: 'x' | 'y' | 'z'; of: Where }
  /** Between two points, centimetres. */
  | { between: Where; and: Where }
  /** Between axes of two bones, degrees. */
  | { axis: Axis; of: string; against: Axis; ofOther: string }
  /** Between an axis of a bone and the way from its base to a point, degrees. */
  | { axis: Axis; of: string; toward: Where }
  /** Of a bone from its rest, degrees. */
  | { turned: string }
  /** Of a link as it is applied ("bone.link"), 0 to 1. */
  | { weight: string };

export const readGauge: Reader<Gauge> = shapes<Gauge, unknown>('something to measure', {
  coordinate: record('a coordinate', { coordinate: needed(oneOf(['x', 'y', 'z'] as const)), of: needed(where) }),
  between: record('a distance', { between: needed(where), and: needed(where) }),
  against: record('an angle between axes', {
    axis: needed(axisReader),
    of: needed(text),
    against: needed(axisReader),
    ofOther: needed(text),
  }),
  toward: record('an angle toward a point', { axis: needed(axisReader), of: needed(text), toward: needed(where) }),
  turned: record('a turn from rest', { turned: needed(text) }),
  weight: record('a weight', { weight: needed(text) }),
} as Record<string, Reader<Gauge>>);

/** The same gauge in a mirrored frame, where x axes of bones are opposed. Names are left as they are. */
export function reflectGauge(gauge: Gauge): Gauge {
  if (!('axis' in gauge)) return gauge;
  const own = { ...gauge, axis: opposedX(gauge.axis) };
  return 'against' in own ? { ...own, against: opposedX(own.against) } : own;
}

/** Reads the gauge off the last evaluation of a subject. */
export function gaugeOf(gauge: Gauge, subject: Subject): number {
  const { world } = subject.state;
  if ('weight' in gauge) return weightOf(gauge.weight, subject);
  if ('turned' in gauge) {
    const at = worldOffset(subject, gauge.turned);
    return turnBetweenDeg(subject.program.restWorld, at, world, at);
  }
  if ('coordinate' in gauge) return 100 * placeOf(subject, gauge.of)['xyz'.indexOf(gauge.coordinate)]!;
  if ('between' in gauge) return 100 * lengthBetween(placeOf(subject, gauge.between), placeOf(subject, gauge.and));
  const own = direction(subject, gauge.of, gauge.axis);
  if ('against' in gauge) return angleBetweenDeg(own, direction(subject, gauge.ofOther, gauge.against));
  const at = worldOffset(subject, gauge.of);
  const toward = placeOf(subject, gauge.toward).map((x, i) => x - world[at + 9 + i]!);
  return angleBetweenDeg(own, toward);
}

function weightOf(link: string, { program, state, exercise }: Subject): number {
  const index = program.linkNames.indexOf(link);
  if (index < 0) throw new Error(`${exercise.id}: no link is called ${link}`);
  return state.weights[index]!;
}

function placeOf(subject: Subject, { bone, at = 0 }: Where): Float64Array {
  const place = new Float64Array(3);
  pointOf(subject.state.world, worldOffset(subject, bone), at * lengthOf(subject, bone), place);
  return place;
}

function direction(subject: Subject, bone: string, axis: Axis): Float64Array {
  const out = new Float64Array(3);
  axisOf(subject.state.world, worldOffset(subject, bone), axis, out);
  return out;
}

function lengthBetween(a: Float64Array, b: Float64Array): number {
  const [x, y, z] = [a[0]! - b[0]!, a[1]! - b[1]!, a[2]! - b[2]!];
  return Math.sqrt(x * x + y * y + z * z);
}

export const gaugeUnit = (gauge: Gauge): 'cm' | 'degrees' | '' => {
  if ('coordinate' in gauge || 'between' in gauge) return 'cm';
  return 'weight' in gauge ? '' : 'degrees';
};
