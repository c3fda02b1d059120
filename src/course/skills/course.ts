import type { Course, CourseExercise, CourseLesson } from '../../skills/course.ts';
import type { Skill } from '../../skills/table.ts';
import { exerciseFileIn, exerciseIdsIn, siteFolders } from '../content-folders.ts';
import { siteSkills } from '../private-course.ts';
import { addressOf, type Lesson, writtenLessons } from '../site/lessons.ts';
import { slug } from '../site/slug.ts';
import { courseExercise } from './course-exercise.ts';

/**
 * The course as the page of skills needs it, exercises in the order in which the lessons show them.
 * Throws where an exercise counts for a skill that is not known.
 */
export async function courseOf(): Promise<Course> {
  const folders = siteFolders();
  const skills = siteSkills();
  const lessons = await writtenLessons();
  const shown = lessons.flatMap(({ data }) => data.exercises);
  const place = (id: string) => (shown.includes(id) ? shown.indexOf(id) : shown.length);
  const ids = exerciseIdsIn(folders).sort((a, b) => place(a) - place(b));
  const exercises = ids.map((id) => courseExercise(exerciseFileIn(folders, id)));
  for (const exercise of exercises) refuseUnknown(exercise, skills);
  return { lessons: lessons.map(courseLesson), exercises, skills };
}

function refuseUnknown(exercise: CourseExercise, known: readonly Skill[]): void {
  const unknown = exercise.skills.find((id) => !known.some((skill) => skill.id === id));
  if (unknown === undefined) return;
  throw new Error(`${exercise.id}: no skill "${unknown}"; course.json of a private folder names skills of its own.`);
}

function courseLesson(lesson: Lesson): CourseLesson {
  const { number, title } = lesson.data;
  const [, of] = /<WorkedExample of="([^"]*)"/.exec(lesson.body ?? '') ?? [];
  const example = of === undefined ? 'text' : slug(`Worked example: ${of}`);
  return { number, title, address: addressOf(lesson), example };
}
