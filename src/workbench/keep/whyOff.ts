import type { WhyOff } from './keeping.ts';

/** Why the browser's storage failed, of what it threw. */
export function whyOff(error: unknown): WhyOff {
  const name = error instanceof DOMException ? error.name : '';
  // A later version of the course has kept something here.
  if (name === 'VersionError') return 'later-version';
  return name === 'QuotaExceededError' ? 'full' : 'forbidden';
}
