/**
 * Outlines of bones as the course draws them, as SVG path data. Points are [x, y] in drawing units, y upwards;
 * SVG's y runs downwards, so every path comes out with y turned over. Angles in radians, counter-clockwise from +x.
 */
export type XY = readonly [x: number, y: number];

const round = (value: number) => String(Math.round(value * 100) / 100 + 0);

/** "x y" for SVG. */
export const at = ([x, y]: XY) => `${round(x)} ${round(-y)}`;

const along = ([x, y]: XY, angleRad: number, distance: number): XY => [
  x + distance * Math.cos(angleRad),
  y + distance * Math.sin(angleRad),
];

/** Angle of the way from one point to another. */
export const headingRad = (from: XY, to: XY) => Math.atan2(to[1] - from[1], to[0] - from[0]);

export const distance = (from: XY, to: XY) => Math.hypot(to[0] - from[0], to[1] - from[1]);

export const between = (from: XY, to: XY, share: number): XY => [
  from[0] + (to[0] - from[0]) * share,
  from[1] + (to[1] - from[1]) * share,
];

/** The point that lies `side` to the left of the way from `from` to `to`, at `share` of it. */
export function beside(from: XY, to: XY, share: number, side: number): XY {
  return along(between(from, to, share), headingRad(from, to) + Math.PI / 2, side);
}

/** A flat paddle with round ends: two circles about base and tip, and the two lines that touch both. */
export function paddle(base: XY, tip: XY, baseRadius: number, tipRadius: number): string {
  const length = distance(base, tip);
  if (length <= Math.abs(baseRadius - tipRadius)) return ring(base, Math.max(baseRadius, tipRadius));
  const heading = headingRad(base, tip);
  const touch = Math.acos((baseRadius - tipRadius) / length);
  const corner = (centre: XY, radius: number, side: number) => at(along(centre, heading + side * touch, radius));
  const arc = (radius: number, to: string, large: 0 | 1) => `A${round(radius)} ${round(radius)} 0 ${large} 0 ${to}`;
  return [
    `M${corner(base, baseRadius, 1)}`,
    arc(baseRadius, corner(base, baseRadius, -1), baseRadius >= tipRadius ? 1 : 0),
    `L${corner(tip, tipRadius, -1)}`,
    arc(tipRadius, corner(tip, tipRadius, 1), baseRadius >= tipRadius ? 0 : 1),
    'Z',
  ].join('');
}

/** A whole circle. */
export function ring(centre: XY, radius: number): string {
  const left = at([centre[0] - radius, centre[1]]);
  const right = at([centre[0] + radius, centre[1]]);
  const r = round(radius);
  return `M${left}A${r} ${r} 0 1 0 ${right}A${r} ${r} 0 1 0 ${left}Z`;
}

/** A ring with a notch on the side where the control's +z points, so that its turn can be seen. */
export function notchedRing(centre: XY, radius: number, turnRad: number): string {
  const inner = at(along(centre, turnRad, radius * 0.6));
  const outer = at(along(centre, turnRad, radius * 1.3));
  return `${ring(centre, radius)}M${inner}L${outer}`;
}

export function segment(from: XY, to: XY): string {
  return `M${at(from)}L${at(to)}`;
}

/** A ruled tape: two edges, closed ends, and a tick at every `step` from the base. */
export function tape(base: XY, tip: XY, width: number, step: number): string {
  const length = distance(base, tip);
  const left = (share: number) => beside(base, tip, share, width / 2);
  const right = (share: number) => beside(base, tip, share, -width / 2);
  const ticks: string[] = [];
  for (let way = step; way < length - step / 4; way += step) {
    ticks.push(segment(left(way / length), beside(base, tip, way / length, 0)));
  }
  return `M${at(left(0))}L${at(left(1))}L${at(right(1))}L${at(right(0))}Z${ticks.join('')}`;
}

/** Part of a circle from one angle to another, the way the difference says. */
export function arc(centre: XY, radius: number, fromRad: number, toRad: number): string {
  const large = Math.abs(toRad - fromRad) > Math.PI ? 1 : 0;
  const sweep = toRad > fromRad ? 0 : 1;
  const r = round(radius);
  return `M${at(along(centre, fromRad, radius))}A${r} ${r} 0 ${large} ${sweep} ${at(along(centre, toRad, radius))}`;
}

/** A slim open head of an arrow that ends in `tip` and comes from the direction of `from`. */
export function arrowHead(from: XY, tip: XY, size: number): string {
  const back = headingRad(tip, from);
  return `M${at(along(tip, back + 0.36, size))}L${at(tip)}L${at(along(tip, back - 0.36, size))}`;
}

/** The same at the end of an arc that runs to `toRad`. */
export function arcHead(centre: XY, radius: number, fromRad: number, toRad: number, size: number): string {
  const tip = along(centre, toRad, radius);
  const backwards = toRad > fromRad ? -Math.PI / 2 : Math.PI / 2;
  return arrowHead(along(tip, toRad + backwards, 1), tip, size);
}

export { along };
