import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { kindOf, markingOf, openExercise } from '../../grader/index.ts';
import { type Audit, auditSchema } from '../audit-figures.ts';
import { exerciseFileIn, exerciseIdsIn, folderOfExercise, siteFolders } from '../content-folders.ts';
import { courseEdition } from '../edition.ts';
import type { ExerciseFile } from '../exercise-files.ts';
import { type Chapter, chapterOf } from '../outline.ts';
import { siteSkills } from '../private-course.ts';
import { siteChapters } from '../site/chapters.ts';
import { minutesOf } from '../skills/minutes.ts';
import type { AuditRow, Offer, OfferedExercise, OfferedTolerance } from './offered.ts';

/** The exercises that may be set, in the order of their lessons, each with what an instructor chooses by. */
export async function offerOf(): Promise<Offer> {
  const folders = siteFolders();
  const [own] = folders;
  const chapters = await siteChapters();
  const file = join(own!, 'audit.json');
  const audit = existsSync(file) ? auditSchema.parse(JSON.parse(readFileSync(file, 'utf8'))) : null;
  const isAuditCurrent =
    audit?.edition === courseEdition(exerciseIdsIn([own!]).map((id) => exerciseFileIn([own!], id).edition));
  // The published audit knows nothing of private exercises, not even of one that takes an audited one's place.
  const auditOf = (id: string) => (folderOfExercise(folders, id) === own ? rowOf(id, audit) : null);
  const exercises = exerciseIdsIn(folders)
    .map((id) => exerciseFileIn(folders, id))
    .filter(({ definition }) => definition.graded)
    .map((file) => offered(file, auditOf(file.definition.id), chapters));
  exercises.sort((a, b) => a.lesson.number.localeCompare(b.lesson.number));
  return { audited: audit?.date ?? null, isAuditCurrent, exercises };
}

const rowOf = (id: string, audit: Audit | null) => audit?.exercises.find((one) => one.id === id) ?? null;

function offered(
  { definition, edition }: ExerciseFile,
  audit: AuditRow | null,
  chapters: readonly Chapter[],
): OfferedExercise {
  const exercise = openExercise(definition, { edition, seed: 0 });
  const { gates } = markingOf(exercise);
  const { id, kind, lesson: number, structures, sizes } = definition;
  const chapter = chapterOf(number, chapters);
  const lesson = chapter.lessons.find((one) => one.number === number);
  if (!lesson) throw new Error(`${id}: there is no lesson ${number}`);
  const tolerances = exercise.requirements.flatMap((requirement): OfferedTolerance[] => {
    const { id, says, allowed } = requirement;
    if (gates.has(id) || allowed <= 0) return [];
    const asked = kindOf(requirement);
    const atLeast = asked.about === 'behaviour' && asked.atLeast === true;
    return [{ id, says, allowed, unit: asked.unit(requirement), atLeast }];
  });
  return {
    id,
    chapter: { number: chapter.number, title: chapter.title },
    lesson: { number, title: lesson.title },
    title: exercise.title,
    kind,
    minutes: minutesOf(definition),
    skills: definition.skills.map((skill) => siteSkills().find((one) => one.id === skill)?.name ?? skill),
    structures: structures.length,
    sizes: sizes.length,
    audit: audit && {
      rightTried: audit.rightTried,
      rightRefused: audit.rightRefused,
      wrongTried: audit.wrongTried,
      wrongPassed: audit.wrongPassed,
    },
    tolerances,
  };
}
