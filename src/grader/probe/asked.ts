import type { BehaviourKind, Meter } from '../requirements/kind.ts';
import { kindOf, type Requirement } from '../requirements/table.ts';
import type { Subject } from '../subject.ts';

/** A behaviour that is asked of a subject. */
export interface Asked {
  readonly requirement: Requirement;
  readonly kind: BehaviourKind<Requirement>;
  /** 1 where more is worse, −1 where less is. */
  readonly sign: 1 | -1;
  /** What a pose measures that is kept out: as nothing wrong. */
  readonly fine: number;
  /** What is no number measures as the worst there is. */
  readonly measure: Meter;
}

export function askedOf(requirement: Requirement, subject: Subject): Asked {
  const kind = kindOf(requirement) as BehaviourKind<Requirement>;
  const [sign, fine, broken] = kind.atLeast ? ([-1, Infinity, 0] as const) : ([1, 0, Infinity] as const);
  const meter = kind.meter(requirement, subject);
  const measure: Meter = (values) => {
    const measured = meter(values);
    return Number.isNaN(measured) ? broken : measured;
  };
  return { requirement, kind, sign, fine, measure };
}
