import { needed, optional } from '../../solver/document/structures.ts';
import { numberFrom } from '../../solver/document/values.ts';
import { alongInput } from '../probe/alongInput.ts';
import { worldAt } from '../subject.ts';
import { distanceMeter } from './change.ts';
import type { BehaviourKind } from './kind.ts';
import { type By, by, type RequirementBase, requirementReader, spoken, unitOf } from './requirement.ts';

export interface StaysBetween extends RequirementBase {
  kind: 'stays-between';
  bone: string;
  /** The input that is the switch. */
  switch: string;
  by: By;
  /** Into how many steps the way is cut; default 4. */
  steps?: number;
}

/**
 * How far the bone strays, part way along the switch, from the shortest way between what it does at the
 * two ends: (d(here, one end) + d(here, other end) − d(ends)) / 2, which is 0 on that way and is the whole
 * distance where both ends agree.
 */
export const staysBetween: BehaviourKind<StaysBetween> = {
  kind: 'stays-between',
  about: 'behaviour',
  read: requirementReader<StaysBetween>('stays-between', {
    bone: needed(spoken),
    switch: needed(spoken),
    by: needed(by),
    steps: optional(numberFrom(2, 32)),
  }),
  unit: unitOf,
  bones: ({ bone }) => [bone],
  inputs: ({ switch: id }) => [id],
  missed: ({ bone, switch: id }, { measured, allowed, nameOf }) =>
    `Part way along ${nameOf(id)}, ${nameOf(bone)} strays ${measured} from the way between both ends; ${allowed} is allowed.`,
  meter(requirement, subject) {
    const index = subject.inputIndex.get(requirement.switch)!;
    const { min, max } = subject.inputs[index]!;
    const distance = distanceMeter(subject, requirement.bone, requirement.by);
    const values = new Float64Array(subject.inputs.length);
    const worldWith = (switchValue: number) => {
      values[index] = switchValue;
      return worldAt(subject, values);
    };
    return (probe) => {
      values.set(probe);
      const [here, low, high] = [worldWith(probe[index]!), worldWith(min), worldWith(max)];
      return (distance(here, low) + distance(here, high) - distance(low, high)) / 2;
    };
  },
  probes({ switch: id, steps = 4 }, subject, ladder) {
    const shares = Array.from({ length: steps - 1 }, (_, step) => (step + 1) / steps);
    return alongInput(subject, id, ladder, shares);
  },
};
