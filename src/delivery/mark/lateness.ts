import type { Assignment } from '../assignment/assignment.ts';
import { millisecondsOf } from '../assignment/time.ts';

/** How a time of collection lies to an assignment's times. */
export interface Lateness {
  state: 'unknown' | 'early' | 'in-time' | 'late' | 'too-late';
  /** Days begun after the due time. */
  days: number;
  /** Share of the full mark that is taken. */
  taken: number;
}

const DAY_MS = 24 * 60 * 60 * 1000;

/**
 * Late is measured by when the work was collected, which only the collector knows; what a file says of itself is a claim.
 * @param collected ISO 8601 with a zone; null where it is not known. One that cannot be read is not known either.
 */
export function latenessOf({ opens, due, late }: Assignment, collected: string | null): Lateness {
  const at = collected === null ? Number.NaN : millisecondsOf(collected);
  if (Number.isNaN(at)) return { state: 'unknown', days: 0, taken: 0 };
  if (opens !== undefined && at < millisecondsOf(opens)) return { state: 'early', days: 0, taken: 0 };
  if (due === undefined || at <= millisecondsOf(due)) return { state: 'in-time', days: 0, taken: 0 };
  const days = Math.ceil((at - millisecondsOf(due)) / DAY_MS);
  if (late?.until !== undefined && at > millisecondsOf(late.until)) return { state: 'too-late', days, taken: 1 };
  return { state: 'late', days, taken: Math.min(1, days * (late?.perDay ?? 0)) };
}
