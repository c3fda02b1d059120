import type { Page } from '@playwright/test';
import type { Answer, Exercise } from '../../../src/grader/index.ts';
import type { Proved } from '../../../src/workbench/desk/proveAnswer.ts';
import { openExercise } from './workbench.ts';

export interface GradedInPage {
  /** As `counterpose grade --json` prints it, but for the answer's name. */
  readonly line: string;
  readonly ms: number;
}

/** Grades answers in a worker like the one that the exercise's own page sends its answers to. */
export async function gradeInPage(page: Page, exercise: Exercise, answers: readonly Answer[]): Promise<GradedInPage[]> {
  await openExercise(page, exercise.id);
  const [worker] = page.workers();
  const definition = `../../exercises/${exercise.id}.json`;
  const proved = await page.evaluate(proveAll, { worker: worker!.url(), definition, answers });
  return proved.map(({ result, messages, ms }) => ({ line: lineOf(result, messages), ms }));
}

type ProvedIn = Proved & { readonly ms: number };

async function proveAll(about: {
  worker: string;
  definition: string;
  answers: readonly Answer[];
}): Promise<ProvedIn[]> {
  const worker = new Worker(about.worker, { type: 'module' });
  const ask = <T>(request: object) =>
    new Promise<T>((done, failed) => {
      worker.onerror = (event) => failed(new Error(event.message));
      worker.onmessage = ({ data }) => ('done' in data ? done(data.done) : failed(new Error(data.failed)));
      worker.postMessage({ id: 0, request });
    });
  const file = await (await fetch(new URL(about.definition, document.baseURI))).json();
  const exercise = await ask<object>({ ask: 'open', seed: 0, ...file });
  const proved: ProvedIn[] = [];
  for (const answer of about.answers) {
    const began = performance.now();
    const { result, messages } = await ask<Proved>({ ask: 'prove', exercise, answer });
    proved.push({ result, messages, ms: performance.now() - began });
  }
  worker.terminate();
  return proved;
}

/** Weight and cause are for the words only, and are not printed. */
function lineOf({ exercise, seed, mark, passed, flags, requirements }: Proved['result'], messages: Proved['messages']) {
  const printed = requirements.map(({ weight: _weight, cause: _cause, ...rest }) => {
    return { ...rest, message: messages[rest.id] };
  });
  return JSON.stringify({ exercise, seed, mark, passed, requirements: printed, flags });
}
