/** What an audit counts; grading.md of the design says what each holds for. */
export interface Counts {
  references: number;
  rightTried: number;
  rightRefused: number;
  wrongTried: number;
  wrongPassed: number;
  undecided: number;
  diagnosed: number;
  diagnosedRight: number;
  counterposes: number;
  counterposesSimple: number;
  /** References too close to a tolerance, wrong turns too near to it. */
  margins: number;
}

export function noCounts(): Counts {
  return {
    references: 0,
    rightTried: 0,
    rightRefused: 0,
    wrongTried: 0,
    wrongPassed: 0,
    undecided: 0,
    diagnosed: 0,
    diagnosedRight: 0,
    counterposes: 0,
    counterposesSimple: 0,
    margins: 0,
  };
}

export function sumCounts(all: readonly Counts[]): Counts {
  const sum = noCounts();
  for (const counts of all) for (const key of Object.keys(sum) as (keyof Counts)[]) sum[key] += counts[key];
  return sum;
}

/** An audit fails by a right rig refused, a wrong one passed, one left undecided, a margin, or many counterposes that are not simple. */
export function fails(counts: Counts): boolean {
  const { rightRefused, wrongPassed, undecided, margins, counterposes, counterposesSimple } = counts;
  return rightRefused + wrongPassed + undecided + margins > 0 || counterposesSimple < 0.95 * counterposes;
}
