import type { CourseLesson } from '../../skills/course.ts';
import type { Offer } from '../../skills/offer.ts';
import { queryFor } from '../site/seed-in-address.ts';

/** Where the course's files begin, as the page's own address sees it. */
const root = () => document.documentElement.dataset.root ?? '/';

export function offerAddress({ exercise, seed }: Offer): string {
  return `${root()}exercises/${exercise}/index.html${queryFor(seed)}`;
}

/** The lesson, or the place in it that has this id. */
export function lessonAddress({ address }: CourseLesson, id?: string): string {
  return `${root()}${address.slice(1)}index.html${id === undefined ? '' : `#${id}`}`;
}

/** The course as its endpoint gives it. Rejects where it cannot be had. */
export async function fetchCourse<T>(): Promise<T> {
  const response = await fetch(`${root()}skills.json`);
  if (!response.ok) throw new Error(`the server answered ${response.status}`);
  return (await response.json()) as T;
}
