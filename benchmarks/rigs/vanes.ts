import type { AimLink, Bone, Rig, Vec3 } from '../../src/solver/index.ts';
import { WORLD_STRIDE } from '../../src/solver/program.ts';
import { between, seeded } from '../../test/support/random.ts';

/** Where the kite is, in turn: metres, a little way off the vanes. */
const KITE_PLACES: readonly Vec3[] = [
  [0.5, 2, 3],
  [-0.4, 1.5, 3.5],
];

/** Many vanes on a quay, each of which watches the kite, which comes last. */
export function vanes(count: number, link: Omit<Partial<AimLink>, 'kind' | 'name' | 'target'>): Rig {
  const random = seeded(count);
  const bone = (name: string, base: Vec3, more: Partial<Bone>): Bone => ({
    name,
    parent: null,
    role: 'helper',
    rest: { base, turn: [0, 0, 0, 1], length: 0.1 },
    ...more,
  });
  const watch: AimLink = { name: 'watch', kind: 'aim', target: { bone: 'kite' }, ...link };
  const own = Array.from({ length: count }, (_, i) =>
    bone(`vane_${i}`, [between(random, -1, 1), between(random, 0, 1), between(random, -1, 1)], { links: [watch] }),
  );
  return { format: 'counterpose/rig', version: 1, bones: [...own, bone('kite', KITE_PLACES[0], {})] };
}

/** Where the kite's base lies among the worlds of so many vanes. */
export const kiteBase = (count: number): number => WORLD_STRIDE * count + 9;

/** The kite's places, each in its turn. */
export function turns(): () => Vec3 {
  let turn = 0;
  return () => KITE_PLACES[turn++ % KITE_PLACES.length];
}
