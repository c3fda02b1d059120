import type { Exercise } from '../../../src/grader/index.ts';
import { gradeAnswers } from './command-line.ts';
import { answerFrom } from './exercises.ts';
import { gradeInPage } from './grading.ts';
import { expect, type Page, test } from './test.ts';

/**
 * Every reference and wrong turn of an exercise gets the same JSON from the page's worker as from the command line.
 * Notes how long the worker took to the counterposes of the wrong turns; that decides nothing.
 */
export async function expectSameMarks(page: Page, exercise: Exercise): Promise<void> {
  const built = [...exercise.references, ...exercise.wrongTurns];
  const answers = built.map((each) => answerFrom(exercise, each));
  const inPage = await gradeInPage(page, exercise, answers);
  const onCommandLine = gradeAnswers(answers);
  expect(onCommandLine).toHaveLength(built.length);
  for (const [i, { answer: _answer, ...graded }] of onCommandLine.entries()) {
    expect(inPage[i]!.line, built[i]!.id).toBe(JSON.stringify(graded));
    expect(graded.mark === 1, `${built[i]!.id} has full marks`).toBe(i < exercise.references.length);
  }
  noteTimes(inPage.slice(exercise.references.length).map(({ ms }) => ms));
}

/** The first also works out what each known wrong turn does, once for the exercise. */
function noteTimes([first, ...others]: readonly number[]): void {
  const sorted = others.toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!.toFixed(0);
  expect(sorted.length).toBeGreaterThan(0);
  const description = `first ${first!.toFixed(0)} ms, then p50 ${at(0.5)} ms, p95 ${at(0.95)} ms of ${sorted.length}`;
  test.info().annotations.push({ type: 'time to the counterpose', description });
  process.stdout.write(`${test.info().title}: counterposes in the browser, ${description}\n`);
}
