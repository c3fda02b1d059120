import { list, needed, record } from '../../solver/document/structures.ts';
import { finite, text } from '../../solver/document/values.ts';
import { ends as endsOf } from '../probe/ladder.ts';
import type { Subject } from '../subject.ts';
import { changeMeter } from './change.ts';
import type { BehaviourKind, Meter } from './kind.ts';
import { type By, by, positive, type RequirementBase, requirementReader, spoken, unitOf } from './requirement.ts';

export interface HandsOver extends RequirementBase {
  kind: 'hands-over';
  bone: string;
  /** The input that is the switch. */
  switch: string;
  by: By;
  ends: readonly HandOverEnd[];
}

export interface HandOverEnd {
  value: number;
  /** Inputs that must move the bone here, by at least `least`. */
  governs: readonly string[];
  /** Inputs that must not. */
  lets: readonly string[];
  least: number;
}

const end = record<HandOverEnd>('an end of a switch', {
  value: needed(finite),
  governs: needed(list('inputs', text)),
  lets: needed(list('inputs', text)),
  least: needed(positive),
});

/**
 * At each end of the switch: how far the inputs that have let go still move the bone, or how much a
 * governing input at its end falls short of moving it by `least`; the larger. Between the ends nothing is
 * asked, so 0.
 */
export const handsOver: BehaviourKind<HandsOver> = {
  kind: 'hands-over',
  about: 'behaviour',
  read: requirementReader<HandsOver>('hands-over', {
    bone: needed(spoken),
    switch: needed(spoken),
    by: needed(by),
    ends: needed(list('ends', end, { least: 1 })),
  }),
  unit: unitOf,
  bones: ({ bone }) => [bone],
  inputs: ({ switch: id, ends }) => [id, ...ends.flatMap(({ governs, lets }) => [...governs, ...lets])],
  missed: ({ bone, switch: id }, { measured, allowed, nameOf }) =>
    `At this end of ${nameOf(id)} the wrong control governs ${nameOf(bone)}: it is off by ${measured}; ${allowed} is allowed.`,
  scaled(requirement, factor) {
    if (requirement.by === 'turn') return requirement;
    return { ...requirement, ends: requirement.ends.map((one) => ({ ...one, least: one.least * factor })) };
  },
  meter(requirement, subject) {
    const index = subject.inputIndex.get(requirement.switch)!;
    const meters = requirement.ends.map((end) => endMeter(requirement, end, subject));
    return (values) => {
      const which = requirement.ends.findIndex((end) => end.value === values[index]);
      return which < 0 ? 0 : meters[which]!(values);
    };
  },
};

function endMeter(requirement: HandsOver, end: HandOverEnd, subject: Subject): Meter {
  const foreign = changeMeter(requirement, subject, end.lets);
  const own = end.governs.map((id) => {
    const index = subject.inputIndex.get(id)!;
    return { index, farthest: endsOf(subject.inputs[index]!), change: changeMeter(requirement, subject, [id]) };
  });
  return (values) => {
    let worst = foreign(values);
    for (const { index, farthest, change } of own) {
      if (farthest.includes(values[index]!)) worst = Math.max(worst, end.least - change(values));
    }
    return worst;
  };
}
