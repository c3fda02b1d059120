import { getCollection } from 'astro:content';
import numbers from '../../../content/numbers.json';
import { numbersSchema } from '../numbers/schema.ts';
import { addressOf, writtenLessons } from '../site/lessons.ts';
import { slug } from '../site/slug.ts';
import { plainText } from './plainText.ts';

/** One thing that can be found: a part of a lesson, a word of the glossary, or a number. */
export interface SearchEntry {
  id: number;
  title: string;
  /** Address from the course's root. */
  address: string;
  text: string;
}

/** All that the search page can find, in the order of the course. */
export async function searchEntries(): Promise<SearchEntry[]> {
  const lessons = (await writtenLessons()).flatMap((lesson) => {
    const { number, title, idea, why } = lesson.data;
    const parts = partsOf(lesson.body ?? '');
    const address = addressOf(lesson);
    return [
      { title: `${number} ${title}`, address, text: `${idea} ${why}` },
      ...parts.map(({ heading, text }) => ({
        title: `${number} ${title}: ${heading}`,
        address: `${address}#${slug(heading)}`,
        text,
      })),
    ];
  });
  const words = (await getCollection('glossary')).map(({ id, data }) => ({
    title: data.word,
    address: `/glossary/#${id}`,
    text: [data.means, ...data.others].join(' '),
  }));
  const facts = numbersSchema.parse(numbers).flatMap(({ id, title, rows }) =>
    rows.map(({ what, value, use }) => ({
      title: `${title}: ${what}`,
      address: `/numbers/#${id}`,
      text: `${value}. ${use}`,
    })),
  );
  return [...lessons, ...words, ...facts].map((entry, id) => ({ id, ...entry }));
}

/** The parts of a lesson under its own second-level headings. */
function partsOf(body: string): { heading: string; text: string }[] {
  return body
    .split(/^## /m)
    .slice(1)
    .map((part) => {
      const [heading, ...rest] = part.split('\n');
      return { heading: heading!.trim(), text: plainText(rest.join('\n')) };
    });
}
