import { needed } from '../../solver/document/structures.ts';
import { moveBetweenMm, turnBetweenDeg } from '../measure/frame.ts';
import { acrossOf } from '../probe/across.ts';
import { lengthOf, roleOf, type Subject, worldAt, worldOffset } from '../subject.ts';
import type { BehaviourKind } from './kind.ts';
import { type By, by as byReader, type RequirementBase, requirementReader, spokenList, unitOf } from './requirement.ts';

export interface Mirrors extends RequirementBase {
  kind: 'mirrors';
  /** Pairs: a bone and its other side; a middle bone stands twice. */
  bones: readonly string[];
  others: readonly string[];
  by: By;
}

/**
 * How far each bone, in the pose reflected, is from the reflection of its other side in the pose. Bones of the skin are to
 * be as long as each other too, for the mesh is bound along them; how long any other is drawn is free.
 */
export const mirrors: BehaviourKind<Mirrors> = {
  kind: 'mirrors',
  about: 'behaviour',
  read: requirementReader<Mirrors>('mirrors', {
    bones: needed(spokenList),
    others: needed(spokenList),
    by: needed(byReader),
  }),
  unit: unitOf,
  bones: ({ bones, others }) => [...bones, ...others],
  inputs: () => [],
  missed: ({ bones, by }, { measured, allowed, nameOf }) =>
    `The two sides do not ${by} alike: one of ${bones.map(nameOf).join(' and ')} is off by ${measured}; ${allowed} is allowed.`,
  meter({ bones, others, by }, subject) {
    const pairs = bones.map((bone, i) => ({
      self: worldOffset(subject, bone),
      other: worldOffset(subject, others[i]!),
      length: lengthOf(subject, bone),
      otherLength: lengthOf(subject, areSkin(subject, bone, others[i]!) ? others[i]! : bone),
    }));
    const wanted = new Float64Array(12);
    const across = acrossOf(subject);
    return (values) => {
      const before = worldAt(subject, values);
      const after = across.worldAt(values);
      let worst = 0;
      for (const { self, other, length, otherLength } of pairs) {
        reflectInto(before, other, wanted);
        const off =
          by === 'turn'
            ? turnBetweenDeg(after, self, wanted, 0)
            : moveBetweenMm(after, self, wanted, 0, length, otherLength);
        worst = Math.max(worst, off);
      }
      return worst;
    };
  },
};

const areSkin = (subject: Subject, ...bones: string[]): boolean =>
  bones.every((bone) => roleOf(subject, bone) === 'skin');

/** A transform reflected in x = 0: y and z axes and the base reflected, x opposite to its reflection. */
function reflectInto(world: Float64Array, offset: number, out: Float64Array): void {
  for (let i = 0; i < 12; i++) {
    const negated = (i % 3 === 0) !== i < 3;
    out[i] = negated ? 0 - world[offset + i]! : world[offset + i]!;
  }
}
