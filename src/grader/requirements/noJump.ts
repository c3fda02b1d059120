import { needed, optional } from '../../solver/document/structures.ts';
import { numberFrom } from '../../solver/document/values.ts';
import { alongInput } from '../probe/alongInput.ts';
import { worldAt } from '../subject.ts';
import { distanceMeter } from './change.ts';
import type { BehaviourKind } from './kind.ts';
import { type By, by, type RequirementBase, requirementReader, spoken, unitOf } from './requirement.ts';

export interface NoJump extends RequirementBase {
  kind: 'no-jump';
  bone: string;
  /** The input that is slid. */
  switch: string;
  by: By;
  /** Into how many steps its range is cut; default 8. */
  steps?: number;
}

const stepsOf = ({ steps = 8 }: NoJump) => steps;

/** The largest change of the bone from one step of the switch to the next, whatever the other inputs are at. */
export const noJump: BehaviourKind<NoJump> = {
  kind: 'no-jump',
  about: 'behaviour',
  read: requirementReader<NoJump>('no-jump', {
    bone: needed(spoken),
    switch: needed(spoken),
    by: needed(by),
    steps: optional(numberFrom(2, 32)),
  }),
  unit: unitOf,
  bones: ({ bone }) => [bone],
  inputs: ({ switch: id }) => [id],
  missed: ({ bone, switch: id }, { measured, allowed, nameOf }) =>
    `One step along ${nameOf(id)} takes ${nameOf(bone)} ${measured} further at once; ${allowed} is allowed.`,
  meter(requirement, subject) {
    const index = subject.inputIndex.get(requirement.switch)!;
    const { min, max } = subject.inputs[index]!;
    const step = (max - min) / stepsOf(requirement);
    const distance = distanceMeter(subject, requirement.bone, requirement.by);
    const values = new Float64Array(subject.inputs.length);
    return (probe) => {
      values.set(probe);
      values[index] = Math.max(min, probe[index]! - step);
      return distance(worldAt(subject, values), worldAt(subject, probe));
    };
  },
  probes(requirement, subject, ladder) {
    const steps = stepsOf(requirement);
    const shares = Array.from({ length: steps }, (_, step) => (step + 1) / steps);
    return alongInput(subject, requirement.switch, ladder, shares);
  },
};
