import type { HandOverEnd } from '../exercise/definition.ts';
import { ends as endsOf } from '../probe/ladder.ts';
import type { Subject } from '../subject.ts';
import { changeMeter, unitOf } from './change.ts';
import type { BehaviourKind, Meter, OfKind } from './kind.ts';

type HandsOver = OfKind<'hands-over'>;

/**
 * At each end of the switch: how far the inputs that have let go still move the bone, or how much a
 * governing input at its end falls short of moving it by `least`; the larger. Between the ends nothing is
 * asked, so 0.
 */
export const handsOver: BehaviourKind<HandsOver> = {
  kind: 'hands-over',
  about: 'behaviour',
  unit: unitOf,
  bones: ({ bone }) => [bone],
  inputs: ({ switch: id, ends }) => [id, ...ends.flatMap(({ governs, lets }) => [...governs, ...lets])],
  missed: ({ bone, switch: id }, { measured, allowed, nameOf }) =>
    `At this end of ${nameOf(id)} the wrong control governs ${nameOf(bone)}: it is off by ${measured}; ${allowed} is allowed.`,
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
