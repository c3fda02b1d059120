import type { Exercise } from '../exercise/exercise.ts';
import type { BehaviourKind } from '../requirements/kind.ts';
import type { Requirement } from '../requirements/table.ts';
import type { Subject } from '../subject.ts';
import { fillProbes } from './fill.ts';
import { ladder } from './ladder.ts';
import { isSameList, type Listed, listed } from './listed.ts';
import { held } from './probes.ts';

const FILL_COUNT = 400;

/**
 * The poses an exercise is tried in, whatever the answer: they depend on nothing of it but what its inputs are at rest.
 * Each list is made when it is first asked for, with what the requirement holds, and must not be written to.
 */
export class Canonical {
  readonly ladder: readonly Float64Array[];
  readonly #lists = new Map<string, Listed>();

  constructor(ladder: readonly Float64Array[]) {
    this.ladder = ladder;
  }

  ladderFor(requirement: Requirement, subject: Subject): Listed {
    return this.#list(`ladder ${heldText(requirement)}`, () => this.ladder, requirement, subject);
  }

  /** Spread from the seed. */
  fillFor(requirement: Requirement, subject: Subject): Listed {
    const { exercise, inputs } = subject;
    const fill = () => fillProbes(inputs, FILL_COUNT, exercise.seed);
    return this.#list(`fill ${heldText(requirement)}`, fill, requirement, subject);
  }

  /** Those that a requirement of this kind chooses itself; one list for all that choose the same. */
  ownFor(requirement: Requirement, kind: BehaviourKind<Requirement>, subject: Subject): Listed {
    const chosen = () => kind.probes!(requirement, subject, this.ladder);
    return this.#list(`own ${requirement.id}`, chosen, requirement, subject);
  }

  #list(name: string, make: () => readonly Float64Array[], requirement: Requirement, subject: Subject): Listed {
    const known = this.#lists.get(name);
    if (known) return known;
    const made = listed(make().map((probe) => held(requirement, subject, probe)));
    const same = [...this.#lists.values()].find((one) => isSameList(one, made)) ?? made;
    this.#lists.set(name, same);
    return same;
  }
}

/** Requirements of one text are measured in the same poses. */
export const heldText = ({ at = {} }: Requirement): string => JSON.stringify(at);

interface Kept {
  readonly rests: readonly number[];
  readonly canonical: Canonical;
}
/** Answers differ in what inputs are at rest only where they change the default of a switch. */
const KEPT_MOST = 4;
const kept = new WeakMap<Exercise, Kept[]>();

/** Kept as long as the exercise is, for the last few ways its inputs were at rest. */
export function canonicalFor(subject: Subject): Canonical {
  const rests = subject.inputs.map(({ rest }) => rest);
  const all = kept.get(subject.exercise) ?? [];
  kept.set(subject.exercise, all);
  const known = all.find((one) => one.rests.every((rest, i) => rest === rests[i]));
  if (known) return known.canonical;
  const canonical = new Canonical(ladder(subject.inputs));
  if (all.length === KEPT_MOST) all.shift();
  all.push({ rests, canonical });
  return canonical;
}
