import { needed } from '../../solver/document/structures.ts';
import { text } from '../../solver/document/values.ts';
import { moveBetweenMm, turnBetweenDeg } from '../measure/frame.ts';
import { lengthOf, subjectOf, worldAt, worldOffset } from '../subject.ts';
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
    const { exercise } = subject;
    const built = exercise.references.find(({ id }) => id === reference)!;
    const prepared = subjectOf(exercise, built.rig, built.parts);
    if (!prepared.ok) throw new Error(`${exercise.id}: the reference ${reference} cannot be evaluated`);
    const model = prepared.subject;
    const pairs = bones.map((bone) => ({
      self: worldOffset(subject, bone),
      wanted: worldOffset(model, bone),
      length: lengthOf(subject, bone),
    }));
    return (values) => {
      const world = worldAt(subject, values);
      const wanted = worldAt(model, values);
      const changes = pairs.map((pair) =>
        by === 'turn'
          ? turnBetweenDeg(world, pair.self, wanted, pair.wanted)
          : moveBetweenMm(world, pair.self, wanted, pair.wanted, pair.length),
      );
      return Math.max(...changes);
    };
  },
};
