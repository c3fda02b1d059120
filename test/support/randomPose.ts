import type { BonePose, Pose, Rig, Switch } from '../../src/solver/document/rig.ts';
import { between, chance, pick, type Random, sometimes } from './random.ts';
import { randomTurn, randomVector, smallTurn } from './randomVectors.ts';

function randomBonePose(random: Random): BonePose {
  const turn = () =>
    pick(random, [smallTurn(random, 1.5), randomTurn(random, 0), { angles: randomVector(random, 180) }]);
  const size = (): [number, number, number] => [
    between(random, 0.5, 1.6),
    between(random, 0.5, 1.6),
    between(random, 0.5, 1.6),
  ];
  return {
    ...sometimes(random, 'move', () => randomVector(random, 0.3)),
    ...sometimes(random, 'turn', turn, 0.7),
    ...sometimes(random, 'size', size, 0.25),
  };
}

const randomSwitchValue = (random: Random, { min, max, sliding }: Switch): number =>
  sliding ? between(random, min, max) : pick(random, [min, max]);

/** A readable pose of the rig, with some of its bones moved and some switches set. Sizes are positive. */
export function randomPose(random: Random, rig: Rig): Pose {
  const bones: Record<string, BonePose> = Object.create(null);
  const switches: Record<string, number> = Object.create(null);
  for (const bone of rig.bones) {
    if (chance(random, 0.6)) bones[bone.name] = randomBonePose(random);
    for (const s of bone.switches ?? []) {
      if (chance(random, 0.7)) switches[`${bone.name}.${s.name}`] = randomSwitchValue(random, s);
    }
  }
  return { ...sometimes(random, 'bones', () => bones, 0.95), ...sometimes(random, 'switches', () => switches, 0.95) };
}
