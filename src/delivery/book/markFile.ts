import { readAnswer } from '../../grader/index.ts';
import { prove } from '../../grader/prove.ts';
import { readJson } from '../../solver/document/json.ts';
import type { Reading, Refusal } from '../../solver/document/refusal.ts';
import { fieldOf } from '../../solver/document/structures.ts';
import type { OpenedAssignment } from '../assignment/readAssignment.ts';
import { isOf } from '../collection/collect.ts';
import type { Collected } from '../collection/collected.ts';
import { AssignmentGrader } from '../mark/gradeAnswer.ts';
import { type MarkedSubmission, markSubmission } from '../mark/markSubmission.ts';
import { readSubmission } from '../submission/readSubmission.ts';
import type { Submission } from '../submission/submission.ts';
import { freeChoicesOf } from './freeChoices.ts';

/** What comes of one file of a collection: somebody's marked work, or nobody's. */
export type MarkedFile =
  | { kind: 'stray'; path: string; refusal: Refusal }
  | {
      kind: 'marked';
      path: string;
      collected: string | null;
      marked: MarkedSubmission;
      /** Free choices of each answer that has enough of them. */
      choices: string[][];
      /** An answer that passes fails under probes that nobody could know beforehand. */
      failsProbes: boolean;
    };

/** Marks the files of a collection one after another, each alone: nothing one holds reaches another. */
export class FileMarker {
  readonly #opened: OpenedAssignment;
  readonly #grader: AssignmentGrader;
  readonly #secretSeed: number | null;

  /** @param secretSeed where probes are to be added that flag an answer; they change no mark */
  constructor(opened: OpenedAssignment, secretSeed: number | null = null) {
    this.#opened = opened;
    this.#grader = new AssignmentGrader(opened);
    this.#secretSeed = secretSeed;
  }

  mark(file: Collected): MarkedFile {
    if (file.kind === 'stray') return file;
    const { path, collected, text } = file;
    const read = readWork(text, this.#opened.assignment.id);
    if (!read.ok) return { kind: 'stray', path, refusal: read.refusal };
    const submission = read.value;
    const marked = markSubmission(this.#opened, this.#grader, submission, collected);
    const choices = submission.answers.flatMap((answer) => this.#choicesOf(answer) ?? []);
    const failsProbes = submission.answers.some((answer) => this.#failsProbes(answer));
    return { kind: 'marked', path, collected, marked, choices, failsProbes };
  }

  #choicesOf(answer: unknown): string[][] | null {
    const exercise = this.#exerciseOf(answer);
    const choices = exercise && freeChoicesOf(answer, exercise);
    return choices && [choices];
  }

  #exerciseOf(answer: unknown) {
    const [id, seed] = [fieldOf(answer, 'exercise'), fieldOf(answer, 'seed')];
    return typeof id === 'string' && Number.isSafeInteger(seed) ? this.#grader.exerciseOf(id, seed as number) : null;
  }

  #failsProbes(answer: unknown): boolean {
    if (this.#secretSeed === null) return false;
    const graded = this.#grader.grade(answer);
    if (graded.outcome !== 'graded' || !graded.result.passed) return false;
    const reading = readAnswer(answer, (id, seed) => this.#grader.exerciseOf(id, seed));
    if (!reading.ok || !reading.value.rig) return false;
    const { rig, parts } = reading.value;
    const exercise = { ...this.#exerciseOf(answer)!, seed: this.#secretSeed };
    return prove(exercise, { rig, ...(parts && { parts }) }).findings.some(({ status }) => status !== 'met');
  }
}

/** A submission, or a single answer that names its learner, which is a submission of one. */
function readWork(text: string, assignment: string): Reading<Submission> {
  const json = readJson(text);
  if (!json.ok) return json;
  if (!isOf(json.value, 'answer')) return readSubmission(json.value);
  const learner = fieldOf(json.value, 'learner');
  return readSubmission({ format: 'counterpose/submission', version: 1, assignment, learner, answers: [json.value] });
}
