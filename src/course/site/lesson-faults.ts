import type { LessonHead } from '../lesson-schema.ts';

/** Where the text of a lesson, as HTML, and its head do not agree: a sentence each. */
export function lessonFaults(head: Pick<LessonHead, 'exercises' | 'terms'>, html: string): string[] {
  const plates = allOf(html, /<figure class="plate" id="plate-(\d+)"/g).map(Number);
  const exercises = allOf(html, /<section class="exercise" id="exercise-([^"]+)"/g);
  const opened = new Set(allOf(html, / popovertarget="word-([^"]+)"/g));
  const faults = [
    ...head.terms.filter((id) => !opened.has(id)).map((id) => `the head lists the term "${id}", which no <Term> opens`),
    ...[...opened]
      .filter((id) => !head.terms.includes(id))
      .map((id) => `<Term id="${id}"> is not among the head's terms`),
  ];
  if (plates.some((number, place) => number !== place + 1)) {
    faults.push(`the plates are numbered ${plates.join(', ')}, not from 1 upwards`);
  }
  if (exercises.join() !== head.exercises.join()) {
    faults.push(
      `the head lists the exercises [${head.exercises.join(', ')}], the text shows [${exercises.join(', ')}]`,
    );
  }
  return faults;
}

const allOf = (html: string, pattern: RegExp) => [...html.matchAll(pattern)].map(([, found]) => found!);
