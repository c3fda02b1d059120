/**
 * Times grading: how it grows with the number of answers, how much two threads save, the time of one answer, and what a
 * proof costs beside what it asks for done plainly. Absolute times are of this machine and how busy it is; ratios count.
 * Usage: node benchmarks/grading.ts [proofs]; with "proofs" only these, exercise by exercise
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { GradedLine, Named } from '../src/cli/answerGrader.ts';
import { inOrder } from '../src/cli/pool.ts';
import { readExerciseFile } from '../src/course/exercise-files.ts';
import { type Exercise, grade, type Marking, markingOf, openExercise } from '../src/grader/index.ts';
import { prove } from '../src/grader/prove.ts';
import { plainWorkOf } from './plainWork.ts';

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

/** How many times as long as what they ask for, done plainly, the proofs of an exercise's references take; the worst of them. */
function costOf(asked: Exercise): number {
  return Math.max(...asked.references.map((reference) => costOfOne(asked, reference)));
}

function costOfOne(asked: Exercise, work: Work): number {
  const plain = plainWorkOf(asked, work);
  return plain ? quickest(() => prove(asked, work)) / quickest(() => plain.run()) : Number.NaN;
}

/** Milliseconds of processors for one, in the quickest of seven rounds of at least twenty milliseconds. */
function quickest(work: () => unknown): number {
  const first = [0, 1, 2, 3].map(() => timeOf(work));
  const times = Math.ceil(20 / Math.min(...first));
  const round = () => {
    const before = process.cpuUsage();
    for (let n = 0; n < times; n++) work();
    return process.cpuUsage(before).user / 1000 / times;
  };
  return Math.min(...Array.from({ length: 7 }, round));
}

function middle(list: readonly number[], share: number): number {
  const sorted = [...list].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
}

const costs = built.map((one) => ({ id: one.id, cost: costOf(one) })).sort((a, b) => a.cost - b.cost);
const [inMiddle, worst] = [costs[Math.floor(costs.length / 2)]!, costs.at(-1)!];
console.log(
  `proof beside what it asks for done plainly: median ${inMiddle.cost.toFixed(2)}, ` +
    `worst ${worst.cost.toFixed(2)} times (${worst.id}); above 2: ${costs.filter(({ cost }) => cost > 2).length} of ${costs.length}`,
);
if (process.argv[2] === 'proofs') {
  for (const { id, cost } of costs) console.log(`${cost.toFixed(2)} ${id}`);
} else {
  tellOfOne();
  for (const threads of [1, 2]) for (const count of [250, 500, 1000]) await tellOfMany(count, threads);
}

function tellOfOne(): void {
  const times = built.flatMap((one) => answerTimes(markingOf(one)));
  const [half, most] = [middle(times, 0.5), middle(times, 0.95)];
  console.log(`one answer: p50 ${half.toFixed(1)} ms, p95 ${most.toFixed(1)} ms of ${times.length}`);
}

async function tellOfMany(count: number, threads: number): Promise<void> {
  const before = process.cpuUsage();
  const seconds = await secondsFor(count, threads);
  const busy = process.cpuUsage(before).user / 1e6;
  const each = (1000 * seconds) / count;
  console.log(
    `${count} answers, ${threads} threads: ${seconds.toFixed(2)} s, ${each.toFixed(2)} ms each; ${busy.toFixed(2)} s of processors`,
  );
}
