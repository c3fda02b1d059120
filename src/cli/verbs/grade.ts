import {
  type Exercise,
  type Graded,
  grade,
  type Marking,
  markingOf,
  messageOf,
  openExercise,
  poseText,
  readAnswerText,
} from '../../grader/index.ts';
import type { Reading, Refusal } from '../../solver/document/refusal.ts';
import { readArguments } from '../arguments.ts';
import { Exercises } from '../content.ts';
import { readTextFile } from '../files.ts';
import { batchesOfLines } from '../lines.ts';
import { print } from '../output.ts';
import { refusalLine, UsageError } from '../refusal.ts';
import type { ExitStatus, Verb } from '../verb.ts';

const OPTIONS = { json: { type: 'boolean' }, content: { type: 'string' } } as const;

/** Grades answers, one after another; one that cannot be used stops nothing. */
export const gradeVerb: Verb = {
  help: `
Usage: counterpose grade ANSWER.json… [--json] [--content DIR]
       counterpose grade - [--json] [--content DIR]

Proves each answer and prints its mark and, for every requirement, what was measured. "-" reads one answer a
line from standard input. Exits with 2, after printing all, if any answer could not be used.

  --json         one object a line, for machines
  --content DIR  look in this folder of lessons and exercises too
`,
  async run(args): Promise<ExitStatus> {
    const { values, positionals } = readArguments(args, OPTIONS);
    if (positionals.length === 0) throw new UsageError('an answer is expected, or - for standard input');
    const grader = new AnswerGrader(new Exercises(values.content));
    const answers = positionals.length === 1 && positionals[0] === '-' ? answersOfStdin() : answersOfFiles(positionals);
    let status: ExitStatus = 0;
    for await (const { name, text } of answers) {
      const outcome = text.ok ? grader.grade(text.value) : text;
      if (!outcome.ok) status = 2;
      await print(values.json ? `${JSON.stringify(outcomeData(name, outcome))}\n` : outcomeText(name, outcome));
    }
    return status;
  },
};

interface Named {
  /** The path, or the line number. */
  name: string | number;
  text: Reading<string>;
}

async function* answersOfFiles(paths: readonly string[]): AsyncGenerator<Named> {
  for (const path of paths) yield { name: path, text: await readTextFile(path) };
}

async function* answersOfStdin(): AsyncGenerator<Named> {
  for await (const lines of batchesOfLines(process.stdin)) {
    for (const { number, text } of lines) yield { name: number, text };
  }
}

type Outcome = { ok: true; exercise: Exercise; result: Graded } | { ok: false; refusal: Refusal };

/** Opens each exercise once a seed; keeps the last few, so that memory stays bounded however many come. */
class AnswerGrader {
  readonly #exercises: Exercises;
  readonly #markings = new Map<string, Marking>();

  constructor(exercises: Exercises) {
    this.#exercises = exercises;
  }

  grade(text: string): Outcome {
    const reading = readAnswerText(text, (id, seed) => this.#markingFor(id, seed)?.exercise ?? null);
    if (!reading.ok) return reading;
    const marking = this.#markingFor(reading.value.exercise, reading.value.seed)!;
    return { ok: true, exercise: marking.exercise, result: grade(marking, reading.value) };
  }

  #markingFor(id: string, seed: number): Marking | null {
    const key = `${id}\n${seed}`;
    const known = this.#markings.get(key);
    if (known) return known;
    const file = this.#exercises.get(id);
    if (!file) return null;
    const marking = markingOf(openExercise(file.definition, { edition: file.edition, seed }));
    if (this.#markings.size >= 64) this.#markings.delete(this.#markings.keys().next().value!);
    this.#markings.set(key, marking);
    return marking;
  }
}

function outcomeData(name: string | number, outcome: Outcome) {
  if (!outcome.ok) return { answer: name, unusable: outcome.refusal };
  const { exercise, result } = outcome;
  return {
    answer: name,
    exercise: result.exercise,
    seed: result.seed,
    mark: result.mark,
    passed: result.passed,
    requirements: result.requirements.map(({ weight: _weight, cause: _cause, ...shown }) => ({
      ...shown,
      message: messageOf(exercise, { weight: _weight, cause: _cause, ...shown }),
    })),
    flags: result.flags,
  };
}

function outcomeText(name: string | number, outcome: Outcome): string {
  if (!outcome.ok) return `${refusalLine(String(name), outcome.refusal)}\n`;
  const { exercise, result } = outcome;
  const lines = result.requirements.map((requirement) => {
    const pose = requirement.counterpose ? ` Shown by: ${poseText(requirement.counterpose)}.` : '';
    return `  ${requirement.status}: ${messageOf(exercise, requirement)}${pose}`;
  });
  const verdict = `mark ${Math.round(result.mark * 100)} %, ${result.passed ? 'passed' : 'not passed'}`;
  return [`${name}: ${exercise.title}, ${verdict}`, ...lines, ''].join('\n');
}
