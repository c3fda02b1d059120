import { needed } from '../../solver/document/structures.ts';
import { restValues } from '../probe/boundInput.ts';
import { ends } from '../probe/ladder.ts';
import { changeMeter } from './change.ts';
import type { BehaviourKind } from './kind.ts';
import { type By, by, type RequirementBase, requirementReader, spoken, unitOf } from './requirement.ts';

export interface AnswersTo extends RequirementBase {
  kind: 'answers-to';
  bone: string;
  input: string;
  by: By;
}

/**
 * How far the bone goes from its place at rest when the input alone is moved to an end: the lesser of its
 * ends. So a lock, a limit or a link that cancels the input cannot make the other requirements empty.
 */
export const answersTo: BehaviourKind<AnswersTo> = {
  kind: 'answers-to',
  about: 'behaviour',
  read: requirementReader<AnswersTo>('answers-to', { bone: needed(spoken), input: needed(spoken), by: needed(by) }),
  atLeast: true,
  unit: unitOf,
  bones: ({ bone }) => [bone],
  inputs: ({ input }) => [input],
  missed: ({ bone, input }, { measured, allowed, nameOf }) =>
    `Moving ${nameOf(input)} to its end moves ${nameOf(bone)} by ${measured} only; at least ${allowed} is asked.`,
  meter: (requirement, subject) => changeMeter(requirement, subject, [requirement.input]),
  probes({ input }, subject) {
    const index = subject.inputIndex.get(input)!;
    return ends(subject.inputs[index]!).map((value) => {
      const probe = restValues(subject.inputs);
      probe[index] = value;
      return probe;
    });
  },
};
