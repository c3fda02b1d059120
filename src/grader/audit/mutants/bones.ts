import type { Bone, Quat, Rig, Switch } from '../../../solver/document/rig.ts';
import { type Vary, varyBones } from '../variation.ts';

/** Another role: kept from a copy, or never set. */
export const rerole: Vary = (rig) =>
  varyBones(rig, (bone) => [
    [`role ${bone.role === 'skin' ? 'helper' : 'skin'}`, { ...bone, role: bone.role === 'skin' ? 'helper' : 'skin' }],
  ]);

/** Another parent: none, or that of its parent. */
export const reparent: Vary = (rig) =>
  varyBones(rig, (bone) => {
    if (bone.parent === null || bone.attach === 'tip') return [];
    const above = parentOf(rig, bone.parent);
    const parents = above === null ? [null] : [null, above];
    return parents.map((parent) => [`under ${parent ?? 'nothing'}`, { ...bone, parent }]);
  });

function parentOf(rig: Rig, name: string): string | null {
  return rig.bones.find((bone) => bone.name === name)?.parent ?? null;
}

/** What it takes of its parent. */
export const reinherit: Vary = (rig) =>
  varyBones(rig, (bone) => {
    if (bone.parent === null) return [];
    const others = (['all', 'uniform', 'turn'] as const).filter((inherits) => inherits !== (bone.inherits ?? 'all'));
    return others.map((inherits) => [`inherits ${inherits}`, { ...bone, inherits }]);
  });

/** Out of place at rest: a centimetre for each decimetre of its length to the side, or turned by 10° about x. */
export const displace: Vary = (rig) =>
  varyBones(rig, (bone) => {
    if (bone.attach === 'tip') return [];
    const [x, y, z] = bone.rest.base;
    const aside: Bone = { ...bone, rest: { ...bone.rest, base: [x + bone.rest.length / 10, y, z] } };
    const turned: Bone = { ...bone, rest: { ...bone.rest, turn: tilted(bone.rest.turn) } };
    return [
      ['aside at rest', aside],
      ['turned at rest', turned],
    ];
  });

/** q times a turn by 10° about x; sin 5° and cos 5° to double precision. */
function tilted([x, y, z, w]: Quat): Quat {
  const [s, c] = [0.08715574274765817, 0.9961946980917455];
  return [x * c + w * s, y * c + z * s, z * c - y * s, w * c - x * s];
}

/** Every channel locked. */
export const lockBone: Vary = (rig) =>
  varyBones(rig, (bone) => {
    const all = [true, true, true] as const;
    return bone.role === 'control' ? [['locked', { ...bone, locks: { move: all, turn: all, size: all } }]] : [];
  });

/** Every lock left open. */
export const unlockBone: Vary = (rig) =>
  varyBones(rig, (bone) => {
    const { locks, ...open } = bone;
    return locks && JSON.stringify(locks).includes('true') ? [['locks left open', open]] : [];
  });

/** Turned in another order of axes. */
export const reorderTurns: Vary = (rig) =>
  varyBones(rig, (bone) => {
    if (bone.role !== 'control') return [];
    const turnOrder = (bone.turnOrder ?? 'xyz') === 'xyz' ? 'zyx' : 'xyz';
    return [[`turns in the order ${turnOrder}`, { ...bone, turnOrder }]];
  });

/** A switch that does not slide, or rests at its other end. */
export const reswitch: Vary = (rig) =>
  varyBones(rig, (bone) =>
    (bone.switches ?? []).flatMap((own, at): [string, Bone][] => {
      const change = (changed: Switch): Bone => ({
        ...bone,
        switches: bone.switches!.map((one, i) => (i === at ? changed : one)),
      });
      const other = own.default === own.min ? own.max : own.min;
      return [
        [`${own.name} does not slide`, change({ ...own, sliding: !own.sliding })],
        [`${own.name} rests at ${other}`, change({ ...own, default: other })],
      ];
    }),
  );
