import { changeMeter, unitOf } from './change.ts';
import type { BehaviourKind, OfKind } from './kind.ts';

/** How far moving the named inputs takes the bone, whatever the other inputs do. */
export const holdsStill: BehaviourKind<OfKind<'holds-still'>> = {
  kind: 'holds-still',
  about: 'behaviour',
  unit: unitOf,
  bones: ({ bone }) => [bone],
  inputs: ({ moving }) => moving,
  missed: ({ bone, by }, { measured, allowed, nameOf }) =>
    `${nameOf(bone)} should stay where it is, but ${by === 'turn' ? 'turns' : 'moves'} by ${measured}; ${allowed} is allowed.`,
  meter: (requirement, subject) => changeMeter(requirement, subject, requirement.moving),
};
