import { dayInWords } from '../../skills/day.ts';
import type { Row, Sheet } from '../../skills/sheet.ts';
import { minutesWords, standingWords } from '../../skills/words.ts';
import { lessonAddress, offerAddress } from './addresses.ts';
import { element, link } from './elements.ts';

/** Puts into the page what is due, what comes next, and how each skill stands. */
export function showSheet(sheet: Sheet, now: number): void {
  place('due').replaceChildren(...dueIn(sheet, now));
  place('next').replaceChildren(...nextIn(sheet, now));
  for (const row of sheet.rows) {
    const cell = document.querySelector(`[data-skill="${row.skill.id}"] .stands`);
    cell?.replaceChildren(...standsIn(row, now));
  }
}

const place = (id: string) => document.getElementById(`skills-${id}`)!;

function dueIn({ due, rows }: Sheet, now: number): HTMLElement[] {
  if (due.length > 0) return [element('ul', ...due.map(dueItem))];
  const days = rows.flatMap(({ standing }) => (standing.is === 'known' ? [standing.schedule.due] : []));
  if (days.length === 0) return [element('p', 'Nothing. Reviews begin when a skill is known.')];
  return [element('p', `Nothing. The next review is on ${dayInWords(Math.min(...days), now)}.`)];
}

function dueItem({ skill, offer }: Row): HTMLElement {
  return element('li', `${skill.name}: rebuild `, offerLink(offer), `, ${minutesWords(offer.minutes)}.`);
}

function nextIn({ next, rows }: Sheet, now: number): HTMLElement[] {
  if (next) {
    const { lesson } = next;
    const first = element('p', 'Lesson ', link(lessonAddress(lesson), `${lesson.number} ${lesson.title}`), '.');
    return [first, element('ul', ...next.rows.map((row) => nextItem(row, now)))];
  }
  const left = rows.filter(({ standing }) => standing.is !== 'known');
  if (left.length === 0) return [element('p', 'Every skill is known. Only reviews are left.')];
  return [element('ul', ...left.map((row) => nextItem(row, now)))];
}

function nextItem(row: Row, now: number): HTMLElement {
  const { skill, standing } = row;
  return element('li', `${skill.name} (${standingWords(standing, now)}): `, ...whatToDo(row), '.');
}

function standsIn(row: Row, now: number): (Node | string)[] {
  const { standing, due, offer } = row;
  const words = element('span', standingWords(standing, now));
  if (due) return [words, element('span', 'rebuild ', offerLink(offer))];
  if (standing.is === 'known') return [words];
  return [words, element('span', ...whatToDo(row))];
}

/** Ten tries are enough to see that an eleventh teaches nothing: back to the example first. */
function whatToDo({ offer, help }: Row): (Node | string)[] {
  if (!help) return ['try ', offerLink(offer)];
  return [
    'ten tries have not been enough; go back to the ',
    link(lessonAddress(help, help.example), `worked example of ${help.number}`),
    ' and its ',
    link(lessonAddress(help, 'card'), 'card'),
    ', then on with ',
    offerLink(offer),
  ];
}

function offerLink(offer: Row['offer']): HTMLElement {
  return link(offerAddress(offer), offer.title);
}
