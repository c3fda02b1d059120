import { type Attempt, keyOf } from './attempt.ts';

/** All the attempts of several lists, each once, the earliest first: the order of the lists does not matter. */
export function merged(...lists: readonly (readonly Attempt[])[]): Attempt[] {
  const byKey = new Map<string, Attempt>();
  for (const attempt of lists.flat()) {
    const key = keyOf(attempt).join(' ');
    const there = byKey.get(key);
    byKey.set(key, there ? joined(there, attempt) : attempt);
  }
  return [...byKey.values()].sort(byTime);
}

/** Two accounts of one attempt: the skills of both, and of what they say against each other the less favourable. */
export function joined(a: Attempt, b: Attempt): Attempt {
  const named = [a.named, b.named].filter((each) => each !== undefined);
  return {
    ...a,
    skills: [...new Set([...a.skills, ...b.skills])].sort(),
    passed: a.passed && b.passed,
    aided: a.aided || b.aided,
    ...(named.length > 0 && { named: named.every(Boolean) }),
  };
}

function byTime(a: Attempt, b: Attempt): number {
  return a.when - b.when || (a.exercise < b.exercise ? -1 : a.exercise > b.exercise ? 1 : a.seed - b.seed);
}
