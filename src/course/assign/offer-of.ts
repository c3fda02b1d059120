import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { kindOf, markingOf, openExercise } from '../../grader/index.ts';
import { SKILLS } from '../../skills/table.ts';
import { type Audit, auditSchema } from '../audit-figures.ts';
import { courseEdition } from '../edition.ts';
import { type ExerciseFile, exerciseIds, readExerciseFile } from '../exercise-files.ts';
import { chapterOf } from '../outline.ts';
import { minutesOf } from '../skills/minutes.ts';
import type { Offer, OfferedExercise, OfferedTolerance } from './offered.ts';

/** The exercises that may be set, in the order of their lessons, each with what an instructor chooses by. */
export function offerOf(contentDir: string): Offer {
  const file = join(contentDir, 'audit.json');
  const audit = existsSync(file) ? auditSchema.parse(JSON.parse(readFileSync(file, 'utf8'))) : null;
  const files = exerciseIds(contentDir).map((id) => readExerciseFile(contentDir, id));
  const isAuditCurrent = audit?.edition === courseEdition(files.map(({ edition }) => edition));
  const exercises = files.filter(({ definition }) => definition.graded).map((one) => offered(one, audit));
  exercises.sort((a, b) => a.lesson.number.localeCompare(b.lesson.number));
  return { audited: audit?.date ?? null, isAuditCurrent, exercises };
}

function offered({ definition, edition }: ExerciseFile, audit: Audit | null): OfferedExercise {
  const exercise = openExercise(definition, { edition, seed: 0 });
  const { gates } = markingOf(exercise);
  const { id, kind, lesson: number, structures, sizes } = definition;
  const chapter = chapterOf(number);
  const lesson = chapter.lessons.find((one) => one.number === number)!;
  const row = audit?.exercises.find((one) => one.id === id) ?? null;
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
    skills: definition.skills.map((skill) => SKILLS.find((one) => one.id === skill)?.name ?? skill),
    structures: structures.length,
    sizes: sizes.length,
    audit: row && {
      rightTried: row.rightTried,
      rightRefused: row.rightRefused,
      wrongTried: row.wrongTried,
      wrongPassed: row.wrongPassed,
    },
    tolerances,
  };
}
