import { needed } from '../../solver/document/structures.ts';
import { moveBetweenMm, turnBetweenDeg } from '../measure/frame.ts';
import { restValues } from '../probe/boundInput.ts';
import { worldAt, worldOffset } from '../subject.ts';
import type { BehaviourKind } from './kind.ts';
import { type By, by as byReader, type RequirementBase, requirementReader, spokenList, unitOf } from './requirement.ts';

export interface RestUnchanged extends RequirementBase {
  kind: 'rest-unchanged';
  bones: readonly string[];
  by: By;
}

/** How far the links take a bone from its own rest while no input is moved: the worst of the bones named. */
export const restUnchanged: BehaviourKind<RestUnchanged> = {
  kind: 'rest-unchanged',
  about: 'behaviour',
  read: requirementReader<RestUnchanged>('rest-unchanged', { bones: needed(spokenList), by: needed(byReader) }),
  unit: unitOf,
  bones: ({ bones }) => bones,
  inputs: () => [],
  missed: ({ bones, by }, { measured, allowed, nameOf }) =>
    `At rest nothing should ${by}, but ${oneOf(bones.map(nameOf))} does so by ${measured}; ${allowed} is allowed.`,
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

function oneOf(names: readonly string[]): string {
  return names.length === 1 ? names[0]! : `one of ${names.join(' and ')}`;
}
