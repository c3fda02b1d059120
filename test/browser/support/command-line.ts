import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import type { RequirementResult } from '../../../src/grader/result.ts';

const COUNTERPOSE = resolve(import.meta.dirname, '../../../src/cli/counterpose.mjs');

/** A line of `counterpose grade --json`. */
export interface GradedAnswer {
  readonly answer: string;
  readonly mark: number;
  readonly passed: boolean;
  readonly requirements: readonly (Omit<RequirementResult, 'weight' | 'cause'> & { message: string })[];
}

/** What the command line finds of answers in files, in order. */
export function gradeFiles(paths: readonly string[]): GradedAnswer[] {
  const args = [COUNTERPOSE, 'grade', ...paths, '--json'];
  const run = spawnSync(process.execPath, args, { encoding: 'utf8', maxBuffer: 1 << 28 });
  if (run.status !== 0) throw new Error(`counterpose grade ended with ${run.status}: ${run.stderr || run.stdout}`);
  return run.stdout
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as GradedAnswer);
}
