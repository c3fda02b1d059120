import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import type { Answer } from '../../../src/grader/index.ts';
import type { RequirementResult } from '../../../src/grader/result.ts';

const COUNTERPOSE = resolve(import.meta.dirname, '../../../src/cli/counterpose.mjs');

/** A line of `counterpose grade --json`. */
export interface GradedAnswer {
  /** The path, or the line number. */
  readonly answer: string | number;
  readonly mark: number;
  readonly passed: boolean;
  readonly requirements: readonly (Omit<RequirementResult, 'weight' | 'cause'> & { message: string })[];
}

/** What the command line finds of an answer in a file. */
export function gradeFile(path: string): GradedAnswer {
  return gradeWith([path])[0]!;
}

/** What the command line finds of answers on its standard input, in order. */
export function gradeAnswers(answers: readonly Answer[]): GradedAnswer[] {
  return gradeWith(['-'], answers.map((answer) => `${JSON.stringify(answer)}\n`).join(''));
}

function gradeWith(args: readonly string[], input = ''): GradedAnswer[] {
  const run = spawnSync(process.execPath, [COUNTERPOSE, 'grade', ...args, '--json'], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    input,
  });
  if (run.status !== 0) throw new Error(`counterpose grade ended with ${run.status}: ${run.stderr || run.stdout}`);
  return run.stdout
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as GradedAnswer);
}
