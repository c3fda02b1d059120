import { keptSigns } from '../../styles/fonts/kept-signs.ts';
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
  const unknown = unknownSigns(html);
  if (unknown.length > 0) {
    faults.push(`the mathematics font lacks ${unknown.join(' ')} (add to src/styles/fonts/kept-signs.ts)`);
  }
  return faults;
}

const allOf = (html: string, pattern: RegExp) => [...html.matchAll(pattern)].map(([, found]) => found!);

/** Signs in formulas that the font does not hold, as "Ω (U+3A9)". */
function unknownSigns(html: string): string[] {
  const formulas = allOf(html, /<math\b[^>]*>(.*?)<\/math>/gs).join('');
  const signs = new Set(formulas.replaceAll(/<[^>]*>|&#?\w+;/g, ''));
  return [...signs].filter((sign) => !isKept(sign.codePointAt(0)!)).map((sign) => `${sign} (U+${hex(sign)})`);
}

const isKept = (code: number) => keptSigns.some(([first, last]) => first <= code && code <= last);

const hex = (sign: string) => sign.codePointAt(0)!.toString(16).toUpperCase();
