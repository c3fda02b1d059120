import type { BonePose, Program, Rig, Vec3 } from '../../src/solver/index.ts';
import { packPose } from '../../src/solver/index.ts';
import { between, chance, seeded } from '../../test/support/random.ts';

/** Carried by links and parents: no animator touches them. */
const CARRIED = /^(gaze|eye|lid|brow|indicator|roll|upper_left|lower_left)/;

/** Packed poses as an animator sets them: every bone that is not carried moved and turned a little, the switches anywhere. */
export function otterPoses(rig: Rig, program: Program, count: number): Float64Array[] {
  const random = seeded(30);
  const three = (size: number): Vec3 => [
    between(random, -size, size),
    between(random, -size, size),
    between(random, -size, size),
  ];
  const posed = (): BonePose => ({ move: three(0.02), turn: { angles: three(10) } });
  const touched = rig.bones.filter(({ name }) => !CARRIED.test(name));
  return Array.from({ length: count }, () =>
    packPose(program, {
      bones: Object.fromEntries(touched.map(({ name }) => [name, posed()])),
      switches: { 'holder.together': chance(random, 0.5) ? 0 : random(), 'holder.converge': random() },
    }),
  );
}
