import { moveBetweenMm, turnBetweenDeg } from '../measure/frame.ts';
import { restValues } from '../probe/bound-input.ts';
import { worldAt, worldOffset } from '../subject.ts';
import { unitOf } from './change.ts';
import type { BehaviourKind, OfKind } from './kind.ts';

/** How far the links take a bone from its own rest while no input is moved: the worst of the bones named. */
export const restUnchanged: BehaviourKind<OfKind<'rest-unchanged'>> = {
  kind: 'rest-unchanged',
  about: 'behaviour',
  unit: unitOf,
  bones: ({ bones }) => bones,
  inputs: () => [],
  missed: ({ bones, by }, { measured, allowed, nameOf }) =>
    `At rest nothing should ${by}, but of ${bones.map(nameOf).join(' and ')} one does so by ${measured}; ${allowed} is allowed.`,
  meter({ bones, by }, subject) {
    const { restWorld } = subject.program;
    const offsets = bones.map((bone) => worldOffset(subject, bone));
    return (values) => {
      const world = worldAt(subject, values);
      const changes = offsets.map((offset) =>
        by === 'turn'
          ? turnBetweenDeg(restWorld, offset, world, offset)
          : moveBetweenMm(restWorld, offset, world, offset, subject.rig.bones[offset / 12]!.rest.length),
      );
      return Math.max(...changes);
    };
  },
  probes: (_, subject) => [restValues(subject.inputs)],
};
