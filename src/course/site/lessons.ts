import { type CollectionEntry, getCollection } from 'astro:content';

export type Lesson = CollectionEntry<'lessons'>;

/** The lessons that are written, in the order of the course. Throws where a folder and its lesson disagree. */
export async function writtenLessons(): Promise<Lesson[]> {
  const lessons = await getCollection('lessons');
  for (const { id, data } of lessons) {
    if (!id.startsWith(`${data.number}-`)) {
      throw new Error(`content/lessons/${id}: the folder's name must start with its number, "${data.number}-".`);
    }
  }
  return lessons.sort((a, b) => a.data.number.localeCompare(b.data.number));
}

/** Where a lesson stands in the site. */
export const addressOf = (lesson: Lesson) => `/lessons/${lesson.id}/`;
