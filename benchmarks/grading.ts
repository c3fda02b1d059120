/**
 * Times grading: how it grows with the number of answers, how much two threads save, the time of one answer, and what it
 * costs beside plain evaluation of as many poses. Absolute times are of this machine and how busy it is; ratios count.
 * Usage: node benchmarks/grading.ts
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { GradedLine, Named } from '../src/cli/answerGrader.ts';
import { inOrder } from '../src/cli/pool.ts';
import { readExerciseFile } from '../src/course/exercise-files.ts';
import { type Exercise, grade, type Marking, markingOf, openExercise } from '../src/grader/index.ts';
import { fillProbes } from '../src/grader/probe/fill.ts';
import { prove } from '../src/grader/prove.ts';
import { subjectOf, worldAt } from '../src/grader/subject.ts';

const content = join(import.meta.dirname, '../content');
const opened = readdirSync(join(content, 'exercises')).map((id) => {
  const { definition, edition } = readExerciseFile(content, id);
  return openExercise(definition, { edition, seed: 0 });
});
const built = opened.filter(({ kind }) => kind === 'build' || kind === 'repair');
const exercise = built.find(({ id }) => id === 'two-vanes-one-holder') ?? built[0]!;

type Work = Exercise['references'][number] | Exercise['wrongTurns'][number];
const worksOf = ({ references, wrongTurns }: Exercise): Work[] => [...references, ...wrongTurns];
const answerOf = ({ id, edition, seed }: Exercise, { rig, parts = {} }: Work) =>
  ({ format: 'counterpose/answer', version: 1, exercise: id, edition, seed, rig, parts }) as const;

function answers(count: number): Named[] {
  const texts = worksOf(exercise).map((work) => JSON.stringify(answerOf(exercise, work)));
  return Array.from({ length: count }, (_, n) => ({
    name: n + 1,
    text: { ok: true, value: texts[n % texts.length]! },
  }));
}

/** Seconds to grade so many answers on so many threads, starting them included. */
async function secondsFor(count: number, threads: number): Promise<number> {
  const url = new URL('../src/cli/threads/grade.ts', import.meta.url);
  const started = performance.now();
  for await (const line of inOrder<Named, GradedLine>(url, { json: true }, answers(count), threads)) {
    if (!line.usable) throw new Error(line.text);
  }
  return (performance.now() - started) / 1000;
}

function timeOf(work: () => unknown): number {
  const started = performance.now();
  work();
  return performance.now() - started;
}

/** Milliseconds for each of the answers to an exercise, the wrong turns' own proofs made before. */
function answerTimes(marking: Marking): number[] {
  marking.wrongs();
  return worksOf(marking.exercise).map((work) => timeOf(() => grade(marking, answerOf(marking.exercise, work))));
}

/** How many times the evaluations of a proof, done plainly, the proof takes. */
function costOf(asked: Exercise, work: Work): number {
  const proof = prove(asked, work);
  if (!proof.prepared.ok) return Number.NaN;
  const { evaluations } = proof.prepared.subject;
  const plain = subjectOf(asked, work.rig, work.parts);
  if (!plain.ok) return Number.NaN;
  const poses = fillProbes(plain.subject.inputs, evaluations, 1);
  const rounds = [0, 1, 2, 3, 4].map(() => {
    const proving = timeOf(() => prove(asked, work));
    return proving / timeOf(() => poses.map((pose) => worldAt(plain.subject, pose)));
  });
  return middle(rounds, 0.5);
}

function middle(list: readonly number[], share: number): number {
  const sorted = [...list].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
}

const times = built.flatMap((one) => answerTimes(markingOf(one)));
console.log(
  `one answer: p50 ${middle(times, 0.5).toFixed(1)} ms, p95 ${middle(times, 0.95).toFixed(1)} ms of ${times.length}`,
);
const costs = built.map((one) => costOf(one, one.references[0]!));
console.log(
  `proof beside plain evaluation: median ${middle(costs, 0.5).toFixed(2)}, worst ${Math.max(...costs).toFixed(2)} times`,
);
for (const threads of [1, 2]) {
  for (const count of [250, 500, 1000]) {
    const seconds = await secondsFor(count, threads);
    console.log(
      `${count} answers, ${threads} threads: ${seconds.toFixed(2)} s, ${((1000 * seconds) / count).toFixed(2)} ms each`,
    );
  }
}
