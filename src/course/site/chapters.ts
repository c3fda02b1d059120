import { type Chapter, chaptersWith, isPrivateNumber } from '../outline.ts';
import { privateCourse } from '../private-course.ts';
import { writtenLessons } from './lessons.ts';

/** The chapters of the site: the plan, and that of the private folder it is built with. */
export async function siteChapters(): Promise<readonly Chapter[]> {
  const lessons = (await writtenLessons()).map(({ data }) => ({ number: data.number, title: data.title }));
  const others = lessons.filter(({ number }) => isPrivateNumber(number));
  return chaptersWith(privateCourse().title, others);
}
