import type { Machine } from './machine.ts';
import { END, RUNS } from './ops.ts';

/** Runs the machine's code from its start to its end. */
export function run(machine: Machine): void {
  const { code } = machine;
  // What is imported is looked up at each use, so not within the loop.
  const runs = RUNS;
  const end = END;
  let at = 0;
  while (code[at] !== end) at = runs[code[at]](machine, at + 2, code[at + 1]);
}

/** Runs from one operation up to another; returns where it stopped. */
export function runUntil(machine: Machine, from: number, until: number): number {
  const { code } = machine;
  let at = from;
  while (at < until) at = RUNS[code[at]](machine, at + 2, code[at + 1]);
  return at;
}
