import type { Bone, Driver, Link, Rig } from '../../solver/document/rig.ts';

/** A rig made from another by one change, with the change in words. It may turn out unreadable. */
export interface Variation {
  says: string;
  rig: Rig;
  /** Names that changed: old to new, so that parts stay bound. */
  renamed?: ReadonlyMap<string, string>;
}

/** What of a rig the exercise speaks of, so that other ways of writing it leave that alone. */
export interface Scope {
  /** Bones of the start, and those that stand for parts. */
  spoken: ReadonlySet<string>;
  /** The proof changes the size of something. */
  sizes: boolean;
}

/** A way to make variations of a rig. */
export type Vary = (rig: Rig, scope: Scope) => Variation[];

/** One variation for each change of one link; null takes the link away. */
export function varyLinks(
  rig: Rig,
  changes: (link: Link, bone: Bone) => readonly [says: string, link: Link | null][],
): Variation[] {
  return rig.bones.flatMap((bone) =>
    (bone.links ?? []).flatMap((link, at) =>
      changes(link, bone).map(([says, changed]) => ({
        says: `${bone.name}.${link.name}: ${says}`,
        rig: withBone(rig, { ...bone, links: replaced(bone.links!, at, changed) }),
      })),
    ),
  );
}

/** One variation for each change of one bone. */
export function varyBones(rig: Rig, changes: (bone: Bone) => readonly [says: string, bone: Bone][]): Variation[] {
  return rig.bones.flatMap((bone) =>
    changes(bone).map(([says, changed]) => ({ says: `${bone.name}: ${says}`, rig: withBone(rig, changed) })),
  );
}

/** One variation for each change of one driver; null takes it away. */
export function varyDrivers(
  rig: Rig,
  changes: (driver: Driver) => readonly [says: string, driver: Driver | null][],
): Variation[] {
  return (rig.drivers ?? []).flatMap((driver, at) =>
    changes(driver).map(([says, changed]) => ({
      says: `driver ${driver.name}: ${says}`,
      rig: { ...rig, drivers: replaced(rig.drivers!, at, changed) },
    })),
  );
}

export function withBone(rig: Rig, changed: Bone): Rig {
  return { ...rig, bones: rig.bones.map((bone) => (bone.name === changed.name ? changed : bone)) };
}

function replaced<T>(list: readonly T[], at: number, item: T | null): T[] {
  return list.flatMap((old, i) => (i !== at ? [old] : item === null ? [] : [item]));
}
