import { needed } from '../../solver/document/structures.ts';
import { changeMeter } from './change.ts';
import type { BehaviourKind } from './kind.ts';
import { type By, by, type RequirementBase, requirementReader, spoken, spokenList, unitOf } from './requirement.ts';

export interface HoldsStill extends RequirementBase {
  kind: 'holds-still';
  bone: string;
  moving: readonly string[];
  by: By;
}

/** How far moving the named inputs takes the bone, whatever the other inputs do. */
export const holdsStill: BehaviourKind<HoldsStill> = {
  kind: 'holds-still',
  about: 'behaviour',
  read: requirementReader<HoldsStill>('holds-still', {
    bone: needed(spoken),
    moving: needed(spokenList),
    by: needed(by),
  }),
  unit: unitOf,
  bones: ({ bone }) => [bone],
  inputs: ({ moving }) => moving,
  missed: ({ bone, by }, { measured, allowed, nameOf }) =>
    `${nameOf(bone)} should stay where it is, but ${by === 'turn' ? 'turns' : 'moves'} by ${measured}; ${allowed} is allowed.`,
  meter: (requirement, subject) => changeMeter(requirement, subject, requirement.moving),
};
