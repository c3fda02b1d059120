import { type CollectionEntry, getCollection } from 'astro:content';
import { privateLessonsFolder } from '../content-folders.ts';
import { inOrder } from './lesson-order.ts';

export type Lesson = CollectionEntry<'lessons' | 'privateLessons'>;

/** The lessons that are written, in the order of the course. Throws where folders and lessons disagree. */
export async function writtenLessons(): Promise<Lesson[]> {
  // A collection that is empty would be warned of.
  const others = privateLessonsFolder() === null ? [] : await getCollection('privateLessons');
  return inOrder<Lesson>(await getCollection('lessons'), others);
}

/** Where a lesson stands in the site. */
export const addressOf = (lesson: Lesson) => `/lessons/${lesson.id}/`;
