import { needed } from '../../solver/document/structures.ts';
import { moveBetweenMm, seenFrom, turnBetweenDeg } from '../measure/frame.ts';
import { lengthOf, worldAt, worldOffset } from '../subject.ts';
import type { BehaviourKind } from './kind.ts';
import { type By, by, type RequirementBase, requirementReader, spoken, spokenList, unitOf } from './requirement.ts';

export interface MovesWith extends RequirementBase {
  kind: 'moves-with';
  bone: string;
  /** The bone that should carry it. */
  with: string;
  /** Inputs that move the carrier. */
  moving: readonly string[];
  by: By;
}

/**
 * How far moving the named inputs takes the bone from its place as the carrier sees it, whatever the other
 * inputs do: 0 where it is carried as if fixed. The carrier's size is left out of account.
 */
export const movesWith: BehaviourKind<MovesWith> = {
  kind: 'moves-with',
  about: 'behaviour',
  read: requirementReader<MovesWith>('moves-with', {
    bone: needed(spoken),
    with: needed(spoken),
    moving: needed(spokenList),
    by: needed(by),
  }),
  unit: unitOf,
  bones: (requirement) => [requirement.bone, requirement.with],
  inputs: ({ moving }) => moving,
  missed: (requirement, { measured, allowed, nameOf }) =>
    `${nameOf(requirement.bone)} should go along with ${nameOf(requirement.with)} but is ${measured} from where it would be carried; ${allowed} is allowed.`,
  meter(requirement, subject) {
    const carrier = worldOffset(subject, requirement.with);
    const carried = worldOffset(subject, requirement.bone);
    const length = lengthOf(subject, requirement.bone);
    const indices = requirement.moving.map((id) => subject.inputIndex.get(id)!);
    const still = new Float64Array(subject.inputs.length);
    const before = new Float64Array(12);
    const after = new Float64Array(12);
    return (values) => {
      still.set(values);
      for (const index of indices) still[index] = subject.inputs[index]!.rest;
      seenFrom(worldAt(subject, still), carrier, carried, before);
      seenFrom(worldAt(subject, values), carrier, carried, after);
      return requirement.by === 'turn'
        ? turnBetweenDeg(before, 0, after, 0)
        : moveBetweenMm(before, 0, after, 0, length);
    };
  },
};
