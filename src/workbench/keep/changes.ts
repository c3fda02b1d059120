import type { Step } from '../state/history.ts';
import type { Session } from '../state/session.ts';

const WORK: readonly (keyof Session)[] = ['seed', 'history', 'proofs', 'hints', 'guess'];
const STAND: readonly (keyof Session)[] = ['view', 'pose', 'shown'];

/**
 * What differs between two states: the work; or only how it stands, which is kept but settles nothing between two
 * tabs; or nothing that is worth keeping, such as the bone that is chosen and what was said.
 * @param posed whether the pose is the answer and so part of the work
 */
export function changeBetween(a: Session, b: Session, posed: boolean): 'work' | 'stand' | 'nothing' {
  const differs = (field: keyof Session) => a[field] !== b[field];
  if (WORK.some(differs) || (posed && differs('pose'))) return 'work';
  return STAND.some(differs) ? 'stand' : 'nothing';
}

/** How many steps from the first on are the very same in both. */
export function sharedCount(a: readonly Step[], b: readonly Step[]): number {
  let count = 0;
  while (count < a.length && count < b.length && a[count] === b[count]) count++;
  return count;
}
