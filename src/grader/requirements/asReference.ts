import { needed } from '../../solver/document/structures.ts';
import { text } from '../../solver/document/values.ts';
import { moveBetweenMm, turnBetweenDeg } from '../measure/frame.ts';
import { modelOf } from '../models.ts';
import { lengthOf, worldAt, worldOffset } from '../subject.ts';
import type { BehaviourKind } from './kind.ts';
import { type By, by as byReader, type RequirementBase, requirementReader, spokenList, unitOf } from './requirement.ts';

export interface AsReference extends RequirementBase {
  kind: 'as-reference';
  bones: readonly string[];
  reference: string;
  by: By;
}

/** How far the worst of the bones is from where the reference has it, in the same pose. */
export const asReference: BehaviourKind<AsReference> = {
  kind: 'as-reference',
  about: 'behaviour',
  read: requirementReader<AsReference>('as-reference', {
    bones: needed(spokenList),
    reference: needed(text),
    by: needed(byReader),
  }),
  unit: unitOf,
  bones: ({ bones }) => bones,
  inputs: () => [],
  missed: ({ bones, by }, { measured, allowed, nameOf }) =>
    `${bones.map(nameOf).join(' or ')} should ${by} otherwise here: ${measured} off; ${allowed} is allowed.`,
  meter({ bones, reference, by }, subject) {
    const model = modelOf(subject.exercise, reference);
    const pairs = bones.map((bone) => ({
      self: worldOffset(subject, bone),
      wanted: worldOffset(model, bone),
      length: lengthOf(subject, bone),
    }));
    return (values) => {
      const world = worldAt(subject, values);
      const wanted = worldAt(model, values);
      let worst = 0;
      for (const { self, wanted: at, length } of pairs) {
        const off =
          by === 'turn' ? turnBetweenDeg(world, self, wanted, at) : moveBetweenMm(world, self, wanted, at, length);
        worst = Math.max(worst, off);
      }
      return worst;
    };
  },
};
