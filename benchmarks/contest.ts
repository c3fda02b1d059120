/** Timing several ways of doing one piece of work against each other, on a machine that may be busy with other things. */
import { measure } from 'mitata';

export interface Contest {
  /** What is done, in a few words. */
  work: string;
  /** What one time is of: "ns a bone". */
  unit: string;
  /** How many of that unit one call does. */
  perCall: number;
  /** Nanoseconds in the unit shown: 1, or 1e6 for milliseconds. */
  unitNs?: number;
  contenders: Readonly<Record<string, () => void>>;
  asks?: readonly Ask[];
  notes?: readonly string[];
  /** Say as well how many of these ours does in a second. */
  perSecond?: string;
  /** A call takes about a second. */
  isLong?: boolean;
}

/** How many times faster than a peer ours is to be, at least; below 1, how much slower it may be. */
export interface Ask {
  peer: string;
  atLeast: number;
}

export interface Result {
  work: string;
  unit: string;
  /** Median of each contender, in the unit. */
  medians: Record<string, number>;
  /** How many times the time of ours each peer takes: the median over rounds of the ratio within a round. */
  ratios: Record<string, number>;
  asks: readonly Ask[];
  notes: readonly string[];
}

const ROUNDS = 9;
const OURS = 'ours';

/** Whoever is slow takes few samples in a round; the round's median is enough. */
const OPTIONS = { min_cpu_time: 50e6, min_samples: 3, warmup_samples: 1, batch_samples: 4 };
/** For work of a second or so a call: other processes come between, so what counts is the time of this thread alone. */
const LONG = { ...OPTIONS, min_samples: 1, now: threadTimeNs };

function threadTimeNs(): number {
  const { user, system } = process.threadCpuUsage();
  return 1000 * (user + system);
}

/**
 * Runs the contenders in turn, round after round, so that whatever else the machine does falls on all of them, and
 * compares within each round only.
 */
export async function hold({
  work,
  unit,
  perCall,
  unitNs = 1,
  contenders,
  asks = [],
  notes = [],
  perSecond,
  isLong = false,
}: Contest): Promise<Result> {
  const names = Object.keys(contenders);
  const times: Record<string, number[]> = Object.fromEntries(names.map((name) => [name, []]));
  for (let round = 0; round <= ROUNDS; round++) {
    for (const name of names) {
      const { p50 } = await measure(contenders[name], isLong ? LONG : OPTIONS);
      // The first round is for the engine to get to know the code.
      if (round > 0) times[name].push(p50 / perCall / unitNs);
    }
  }
  const ratiosTo = (name: string) => times[name].map((time, round) => time / times[OURS][round]);
  const ours = median(times[OURS]);
  const rate = perSecond ? [`${Math.round(1e9 / (ours * unitNs)).toLocaleString('en')} ${perSecond} a second`] : [];
  return {
    work,
    unit,
    medians: Object.fromEntries(names.map((name) => [name, median(times[name])])),
    ratios: Object.fromEntries(names.filter((name) => name !== OURS).map((name) => [name, median(ratiosTo(name))])),
    asks,
    notes: [...notes, ...rate],
  };
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}
