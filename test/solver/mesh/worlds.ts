import type { Bone, Mesh, Quat, Rig, Vec3 } from '../../../src/solver/document/rig.ts';

/** A world transform of twelve doubles: three columns, base. */
export type World = readonly number[];

/** T(base)·R(q)·S(size). */
export function worldOf(base: Vec3, [x, y, z, w]: Quat, size: Vec3 = [1, 1, 1]): World {
  const columns = [
    [1 - 2 * (y * y + z * z), 2 * (x * y + w * z), 2 * (x * z - w * y)],
    [2 * (x * y - w * z), 1 - 2 * (x * x + z * z), 2 * (y * z + w * x)],
    [2 * (x * z + w * y), 2 * (y * z - w * x), 1 - 2 * (x * x + y * y)],
  ];
  return [...columns.flatMap((column, i) => column.map((c) => c * size[i]!)), ...base];
}

export const aboutZ = (degrees: number): Quat => {
  const halfRad = (degrees * Math.PI) / 360;
  return [0, 0, Math.sin(halfRad), Math.cos(halfRad)];
};

export const packed = (...worlds: World[]): Float64Array => Float64Array.from(worlds.flat());

export const skinBone = (name: string, base: Vec3, turn: Quat = [0, 0, 0, 1], length = 1): Bone => ({
  name,
  parent: null,
  role: 'skin',
  rest: { base, turn, length },
});

export const rigOf = (bones: readonly Bone[], mesh: Mesh): Rig => ({
  format: 'counterpose/rig',
  version: 1,
  bones,
  mesh,
});
