import type { Course, CourseLesson } from '../../skills/course.ts';
import { exerciseIds, readExerciseFile } from '../exercise-files.ts';
import { addressOf, type Lesson, writtenLessons } from '../site/lessons.ts';
import { slug } from '../site/slug.ts';
import { courseExercise } from './course-exercise.ts';

/** The course as the page of skills needs it, exercises in the order in which the lessons show them. */
export async function courseOf(contentDir: string): Promise<Course> {
  const lessons = await writtenLessons();
  const shown = lessons.flatMap(({ data }) => data.exercises);
  const place = (id: string) => (shown.includes(id) ? shown.indexOf(id) : shown.length);
  const ids = exerciseIds(contentDir).sort((a, b) => place(a) - place(b));
  return {
    lessons: lessons.map(courseLesson),
    exercises: ids.map((id) => courseExercise(readExerciseFile(contentDir, id))),
  };
}

function courseLesson(lesson: Lesson): CourseLesson {
  const { number, title } = lesson.data;
  const [, of] = /<WorkedExample of="([^"]*)"/.exec(lesson.body ?? '') ?? [];
  const example = of === undefined ? 'text' : slug(`Worked example: ${of}`);
  return { number, title, address: addressOf(lesson), example };
}
