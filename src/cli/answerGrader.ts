import type { AssignmentGrader } from '../delivery/mark/gradeAnswer.ts';
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
} from '../grader/index.ts';
import { readText } from '../solver/document/readText.ts';
import type { Reading, Refusal } from '../solver/document/refusal.ts';
import type { Exercises } from './content.ts';
import { refusalLine } from './refusal.ts';

/** An answer as it came in: from a file, or a line. */
export interface Named {
  /** The path, or the line number. */
  name: string | number;
  text: Reading<string>;
}

export interface GradedLine {
  text: string;
  usable: boolean;
}

type Outcome = { ok: true; exercise: Exercise; result: Graded } | { ok: false; refusal: Refusal };

const MARKINGS_KEPT = 64;

/**
 * Grades one answer after another; opens each exercise once a seed and keeps the last few, so memory stays bounded.
 * With an assignment, by the exercises and tolerances that it carries.
 */
export class AnswerGrader {
  readonly #exercises: Exercises;
  readonly #assigned: AssignmentGrader | null;
  readonly #markings = new Map<string, Marking>();

  constructor(exercises: Exercises, assigned: AssignmentGrader | null = null) {
    this.#exercises = exercises;
    this.#assigned = assigned;
  }

  /** The line, or the paragraph for people, that is printed for an answer. */
  line({ name, text }: Named, json: boolean): GradedLine {
    const outcome = text.ok ? this.#gradeGuarded(text.value) : text;
    const shown = json ? `${JSON.stringify(outcomeData(name, outcome))}\n` : outcomeText(name, outcome);
    return { text: shown, usable: outcome.ok };
  }

  /** A fault of the course's content, or of the grader itself, is told of the answer it showed in, and stops no other. */
  #gradeGuarded(text: string): Outcome {
    try {
      return this.#assigned ? this.#gradeAssigned(text, this.#assigned) : this.#grade(text);
    } catch (error) {
      const found = `a fault of the course, not of the answer: ${(error as Error).message}`;
      return { ok: false, refusal: { place: '', found, expected: 'an exercise that can grade it' } };
    }
  }

  #grade(text: string): Outcome {
    const reading = readAnswerText(text, (id, seed) => this.#markingFor(id, seed)?.exercise ?? null);
    if (!reading.ok) return reading;
    const marking = this.#markingFor(reading.value.exercise, reading.value.seed)!;
    return { ok: true, exercise: marking.exercise, result: grade(marking, reading.value) };
  }

  #gradeAssigned(text: string, assigned: AssignmentGrader): Outcome {
    const json = readText<unknown>(text, (value) => ({ ok: true, value }));
    if (!json.ok) return json;
    const graded = assigned.grade(json.value);
    if (graded.outcome === 'unusable') return { ok: false, refusal: graded.refusal };
    const { result } = graded;
    return { ok: true, exercise: assigned.exerciseOf(result.exercise, result.seed)!, result };
  }

  #markingFor(id: string, seed: number): Marking | null {
    const key = `${id}\n${seed}`;
    const known = this.#markings.get(key);
    if (known) return known;
    const file = this.#exercises.get(id);
    if (!file) return null;
    const marking = markingOf(openExercise(file.definition, { edition: file.edition, seed }));
    if (this.#markings.size >= MARKINGS_KEPT) this.#markings.delete(this.#markings.keys().next().value!);
    this.#markings.set(key, marking);
    return marking;
  }
}

function outcomeData(answer: string | number, outcome: Outcome) {
  if (!outcome.ok) return { answer, unusable: outcome.refusal };
  const { exercise, result } = outcome;
  const requirements = result.requirements.map((one) => {
    const { id, kind, gate, status, measured, allowed, unit, counterpose, diagnosis } = one;
    const message = messageOf(exercise, one);
    return { id, kind, gate, status, measured, allowed, unit, counterpose, diagnosis, message };
  });
  const { exercise: id, seed, mark, passed, flags } = result;
  return { answer, exercise: id, seed, mark, passed, requirements, flags };
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
