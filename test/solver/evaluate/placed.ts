/** A rig set elsewhere, turned and at another size, with all that is said of it in rig space or in metres. */
import type { Driver, Link, Pose, Quat, Rig, UpToward, Vec3 } from '../../../src/solver/index.ts';

export interface Placing {
  turn: Quat;
  size: number;
  move: Vec3;
}

export function product([ax, ay, az, aw]: Quat, [bx, by, bz, bw]: Quat): Quat {
  return [
    aw * bx + ax * bw + ay * bz - az * by,
    aw * by - ax * bz + ay * bw + az * bx,
    aw * bz + ax * by - ay * bx + az * bw,
    aw * bw - ax * bx - ay * by - az * bz,
  ];
}

export function rotated([x, y, z, w]: Quat, v: Vec3): Vec3 {
  const [px, py, pz] = product(product([x, y, z, w], [...v, 0]), [-x, -y, -z, w]);
  return [px, py, pz];
}

const times = (v: Vec3, by: number): Vec3 => [v[0] * by, v[1] * by, v[2] * by];

export function placedPoint({ turn, size, move }: Placing, point: Vec3): Vec3 {
  const [x, y, z] = times(rotated(turn, point), size);
  return [x + move[0], y + move[1], z + move[2]];
}

export const placedRig = (rig: Rig, placing: Placing): Rig => ({
  ...rig,
  bones: rig.bones.map((bone) => ({
    ...bone,
    rest: {
      base: placedPoint(placing, bone.rest.base),
      turn: product(placing.turn, bone.rest.turn),
      length: bone.rest.length * placing.size,
    },
    ...(bone.links && { links: bone.links.map((link) => placedLink(link, placing)) }),
  })),
  ...(rig.drivers && { drivers: rig.drivers.map((driver) => placedDriver(driver, placing.size)) }),
});

function placedLink(link: Link, placing: Placing): Link {
  if (link.kind === 'aim' && link.up) {
    return { ...link, up: { ...link.up, toward: placedToward(link.up.toward, placing) } };
  }
  if (link.kind === 'span' && link.restLength) return { ...link, restLength: link.restLength * placing.size };
  if (link.kind === 'limit' && link.move) {
    const { min, max } = link.move;
    return { ...link, move: { min: times(min, placing.size), max: times(max, placing.size) } };
  }
  return link;
}

const placedToward = (toward: UpToward, { turn }: Placing): UpToward =>
  'direction' in toward ? { direction: rotated(turn, toward.direction) } : toward;

function placedDriver(driver: Driver, size: number): Driver {
  const inputs = driver.inputs.map(({ from, times: by = 1 }) => ({
    from,
    times: 'gap' in from || 'shift' in from ? by / size : by,
  }));
  const { output, map } = driver;
  const moves = 'channel' in output && output.channel.startsWith('move');
  const keys = map.keys.map(([x, y]) => [x, moves ? y * size : y] as const);
  return { ...driver, inputs, map: { ...map, keys } };
}

export const placedPose = (pose: Pose, { size }: Placing): Pose => ({
  ...pose,
  bones: Object.fromEntries(
    Object.entries(pose.bones ?? {}).map(([name, { move, ...own }]) => [
      name,
      { ...own, ...(move && { move: times(move, size) }) },
    ]),
  ),
});
