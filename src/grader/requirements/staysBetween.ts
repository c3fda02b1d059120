import { needed, optional } from '../../solver/document/structures.ts';
import { numberFrom } from '../../solver/document/values.ts';
import { alongInput } from '../probe/alongInput.ts';
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
    const low = new Float64Array(12);
    const high = new Float64Array(12);
    const here = new Float64Array(12);
    const values = new Float64Array(subject.inputs.length);
    const keepAt = (switchValue: number, into: Float64Array) => {
      values[index] = switchValue;
      distance.keep(values, into);
    };
    return (probe) => {
      values.set(probe);
      keepAt(probe[index]!, here);
      keepAt(min, low);
      keepAt(max, high);
      const around = distance.between(here, low) + distance.between(here, high);
      return (around - distance.between(low, high)) / 2;
    };
  },
  probes({ switch: id, steps = 4 }, subject, ladder) {
    const shares = Array.from({ length: steps - 1 }, (_, step) => (step + 1) / steps);
    return alongInput(subject, id, ladder, shares);
  },
};
