import { SKILLS, type Skill } from '../../skills/table.ts';
import { chapters } from '../outline.ts';

/** The skills of a chapter, or of the whole course. */
export interface SkillGroup {
  readonly title: string;
  readonly skills: readonly Skill[];
}

/** The skills for which there is an exercise, chapter by chapter, those of the whole course last. */
export function skillGroups(taught: ReadonlySet<string>): SkillGroup[] {
  const skills = SKILLS.filter(({ id }) => taught.has(id));
  const inChapters = chapters.map(({ number, title }) => ({
    title: `${number} ${title}`,
    skills: skills.filter(({ lesson }) => lesson?.startsWith(`${number}.`)),
  }));
  const throughout = { title: 'Through the whole course', skills: skills.filter(({ lesson }) => lesson === null) };
  return [...inChapters, throughout].filter((group) => group.skills.length > 0);
}
