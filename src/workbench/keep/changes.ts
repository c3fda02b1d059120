import type { Step } from '../state/history.ts';
import type { Session } from '../state/session.ts';

/** Whether two states of the work differ in the pose and in what was said, and in nothing else. */
export function isPoseAlone(a: Session, b: Session): boolean {
  return Object.entries(b).every(([field, value]) => {
    return field === 'pose' || field === 'said' || field === 'shown' || a[field as keyof Session] === value;
  });
}

/** How many steps from the first on are the very same in both. */
export function sharedCount(a: readonly Step[], b: readonly Step[]): number {
  let count = 0;
  while (count < a.length && count < b.length && a[count] === b[count]) count++;
  return count;
}
