/** The first moment of the day after, where the learner is. */
function tomorrow(now: number): number {
  return new Date(now).setHours(24, 0, 0, 0);
}

/** A review is due from the morning of its day on, and not from the hour at which the last one was made. */
export function isDue(due: number, now: number): boolean {
  return due < tomorrow(now);
}

/** "9 December", with the year where it is another one. */
export function dayInWords(when: number, now: number): string {
  const sameYear = new Date(when).getFullYear() === new Date(now).getFullYear();
  const year = sameYear ? {} : ({ year: 'numeric' } as const);
  return new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', ...year }).format(when);
}
