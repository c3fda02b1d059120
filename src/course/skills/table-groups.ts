import type { Skill } from '../../skills/table.ts';
import type { Chapter } from '../outline.ts';

/** The skills of a chapter, or of the whole course. */
export interface SkillGroup {
  readonly title: string;
  readonly skills: readonly Skill[];
}

/** The skills that are taught, chapter by chapter, those of the whole course last. */
export function skillGroups(skills: readonly Skill[], chapters: readonly Chapter[]): SkillGroup[] {
  const inChapters = chapters.map(({ number, title }) => ({
    title: `${number} ${title}`,
    skills: skills.filter(({ lesson }) => lesson?.startsWith(`${number}.`)),
  }));
  const throughout = { title: 'Through the whole course', skills: skills.filter(({ lesson }) => lesson === null) };
  return [...inChapters, throughout].filter((group) => group.skills.length > 0);
}
