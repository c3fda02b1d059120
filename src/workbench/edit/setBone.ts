import type { Bone, Inherits, Locks, Role, TurnOrder } from '../../solver/document/rig.ts';
import { changeBone, type Edit, withField } from './draft.ts';

export function setRole(name: string, role: Role): Edit {
  return { says: `make ${name} a ${role}`, apply: (draft) => changeBone(draft, name, (bone) => ({ ...bone, role })) };
}

export function setInherits(name: string, inherits: Inherits): Edit {
  const field = inherits === 'all' ? undefined : inherits;
  return setField(name, 'inherits', field, `change what ${name} takes of its parent`);
}

export function setTurnOrder(name: string, order: TurnOrder): Edit {
  return setField(name, 'turnOrder', order === 'xyz' ? undefined : order, `change the turn order of ${name}`);
}

/** Locks or frees one axis of one channel. */
export function setLock(name: string, channel: keyof Locks, axis: 0 | 1 | 2, locked: boolean): Edit {
  return {
    says: `${locked ? 'lock' : 'free'} ${channel} ${'xyz'[axis]} of ${name}`,
    apply: (draft) =>
      changeBone(draft, name, (bone) => withField(bone, 'locks', locksWith(bone, channel, axis, locked))),
  };
}

function locksWith(bone: Bone, channel: keyof Locks, axis: 0 | 1 | 2, locked: boolean): Locks | undefined {
  const axes = [...(bone.locks?.[channel] ?? [false, false, false])] as [boolean, boolean, boolean];
  axes[axis] = locked;
  const locks = withField({ ...bone.locks }, channel, axes.some(Boolean) ? axes : undefined);
  return Object.keys(locks).length > 0 ? locks : undefined;
}

function setField<K extends 'inherits' | 'turnOrder'>(name: string, field: K, value: Bone[K], says: string): Edit {
  return { says, apply: (draft) => changeBone(draft, name, (bone) => withField(bone, field, value)) };
}
