import type { GradedLine, Named } from '../answerGrader.ts';
import { readArguments } from '../arguments.ts';
import { readTextFile } from '../files.ts';
import type { Grading } from '../graderOf.ts';
import { batchesOfLines } from '../lines.ts';
import { print } from '../output.ts';
import { inOrder } from '../pool.ts';
import { Progress } from '../progress.ts';
import { UsageError } from '../refusal.ts';
import type { ExitStatus, Verb } from '../verb.ts';

const OPTIONS = {
  json: { type: 'boolean' },
  content: { type: 'string' },
  assignment: { type: 'string' },
} as const;

/** So few answers are graded sooner than threads start. */
const FEW = 8;

/** Grades answers, one after another; one that cannot be used stops nothing. */
export const gradeVerb: Verb = {
  help: `
Usage: counterpose grade ANSWER.json… [--assignment A.json] [--json] [--content DIR]
       counterpose grade - [--assignment A.json] [--json] [--content DIR]

Proves each answer and prints its mark and, for every requirement, what was measured. "-" reads one answer a
line from standard input. Exits with 2, after printing all, if any answer could not be used.

  --json               one object a line, for machines
  --content DIR        look in this folder of lessons and exercises too
  --assignment A.json  grade by the exercises and tolerances that this assignment carries, and flag answers to
                       another variant than their learner's
`,
  async run(args): Promise<ExitStatus> {
    const { values, positionals } = readArguments(args, OPTIONS);
    if (positionals.length === 0) throw new UsageError('an answer is expected, or - for standard input');
    const isStream = positionals.length === 1 && positionals[0] === '-';
    const answers = isStream ? answersOfStdin() : answersOfFiles(positionals);
    const json = values.json === true;
    const { assignment, content: contentDir } = values;
    const grading = { contentDir, assignment };
    const isFew = !isStream && positionals.length <= FEW;
    const lines = isFew ? oneByOne(grading, answers, json) : onThreads(grading, answers, json);
    // What is printed on a terminal shows by itself how far it has come.
    const progress = process.stdout.isTTY ? null : new Progress(isStream ? null : positionals.length, 'answers graded');
    let status: ExitStatus = 0;
    for await (const { text, usable } of lines) {
      if (!usable) status = 2;
      await print(text);
      progress?.step();
    }
    progress?.end();
    return status;
  },
};

const threadUrl = new URL('../threads/grade.ts', import.meta.url);

async function* oneByOne(grading: Grading, answers: AsyncIterable<Named>, json: boolean) {
  const grader = await graderFor(grading);
  for await (const answer of answers) yield grader.line(answer, json);
}

async function* onThreads(grading: Grading, answers: AsyncIterable<Named>, json: boolean) {
  // What cannot be used is told here, where it can be told well; else the grader is left to the threads.
  if (grading.contentDir !== undefined || grading.assignment !== undefined) await graderFor(grading);
  yield* inOrder<Named, GradedLine>(threadUrl, { ...grading, json }, answers);
}

/** Loads the grader only once it is needed here. */
const graderFor = async (grading: Grading) => (await import('../graderOf.ts')).graderOf(grading);

async function* answersOfFiles(paths: readonly string[]): AsyncGenerator<Named> {
  for (const path of paths) yield { name: path, text: await readTextFile(path) };
}

async function* answersOfStdin(): AsyncGenerator<Named> {
  for await (const lines of batchesOfLines(process.stdin)) {
    for (const { number, text } of lines) yield { name: number, text };
  }
}
