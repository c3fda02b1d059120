import { type Answer, type Exercise, type Graded, grade, type Marking, readAnswer } from '../../grader/index.ts';
import type { Refusal } from '../../solver/document/refusal.ts';
import { fieldOf } from '../../solver/document/structures.ts';
import type { OpenedAssignment } from '../assignment/readAssignment.ts';
import { seedAttempt, seedOf } from '../variant/seed.ts';
import { Markings } from './markings.ts';

/** What comes of one answer to an assignment. */
export type GradedAnswer = UsableAnswer | { outcome: 'unusable'; exercise: string | null; refusal: Refusal };
export interface UsableAnswer {
  outcome: 'graded';
  /** From 1. */
  attempt: number;
  result: Graded;
}

/** Grades answers by the exercises that an assignment carries, under its tolerances. */
export class AssignmentGrader {
  readonly #opened: OpenedAssignment;
  readonly #markings: Markings;

  constructor(opened: OpenedAssignment) {
    this.#opened = opened;
    this.#markings = new Markings(opened.assignment);
  }

  /**
   * Grades an answer, whatever it is. Flags say whether the variant is another than the learner's, who is the one named
   * here or else in the answer; whether the answer was made for another edition; whether nobody signed the assignment.
   */
  grade(value: unknown, learner?: string): GradedAnswer {
    const exercise = fieldOf(value, 'exercise');
    try {
      const reading = readAnswer(value, (id, seed) => this.#markings.of(id, seed)?.exercise ?? null);
      if (!reading.ok) return { outcome: 'unusable', exercise: asText(exercise), refusal: reading.refusal };
      return this.#graded(reading.value, learner);
    } catch (error) {
      const found = `a fault of the exercise, not of the answer: ${(error as Error).message}`;
      const refusal = { place: '', found, expected: 'an exercise that can grade it' };
      return { outcome: 'unusable', exercise: asText(exercise), refusal };
    }
  }

  /** The exercise as a learner has it, or null where it is not assigned. */
  exerciseOf(id: string, seed: number): Exercise | null {
    return this.#markings.of(id, seed)?.exercise ?? null;
  }

  #graded(answer: Answer, learner: string | undefined): UsableAnswer {
    const marking = this.#markings.of(answer.exercise, answer.seed)!;
    const attempt = answer.attempt ?? 1;
    const result = grade(marking, answer);
    const flags = [...result.flags, ...this.#flagsOf(answer, marking, learner ?? answer.learner)];
    return { outcome: 'graded', attempt, result: { ...result, flags } };
  }

  #flagsOf(answer: Answer, { exercise }: Marking, learner: string | undefined): Graded['flags'] {
    const { assignment, signedBy } = this.#opened;
    const attempt = seedAttempt(exercise.kind, answer.attempt ?? 1);
    const isOwn = learner !== undefined && seedOf(assignment.id, learner, exercise.id, attempt) === answer.seed;
    return [...(isOwn ? [] : (['seed-differs'] as const)), ...(signedBy === null ? (['unsigned'] as const) : [])];
  }
}

const asText = (value: unknown): string | null => (typeof value === 'string' ? value : null);
