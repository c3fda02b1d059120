import { existsSync } from 'node:fs';
import { basename, join } from 'node:path';
import { SKILLS, type Skill } from '../skills/table.ts';
import { privateFolder } from './content-folders.ts';
import { parseFile } from './exercise-files.ts';
import { z } from './zod.ts';

/** What course.json of a private folder may hold. A misspelt field is an error. */
const schema = z.strictObject({
  title: z.string().min(1).optional().describe('Of the chapter of its lessons; the folder’s name if left out.'),
  skills: z
    .array(
      z.strictObject({
        id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'lower-case words joined by hyphens'),
        name: z.string().min(1).describe('What a learner who has it can do.'),
        lesson: z
          .string()
          .nullable()
          .describe('The lesson that teaches it; null where it grows through the whole course.'),
      }),
    )
    .default([])
    .describe('Skills that the course does not have; what its exercises count for.'),
});

export interface PrivateCourse {
  /** Of the chapter in which its own lessons stand. */
  readonly title: string;
  readonly skills: readonly Skill[];
}

/** Reads course.json of a private folder, which may be left out. Throws, naming file and place, where it is at fault. */
export function readPrivateCourse(folder: string): PrivateCourse {
  const file = join(folder, 'course.json');
  const parsed = schema.safeParse(existsSync(file) ? parseFile(file) : {});
  if (!parsed.success) throw new Error(`${file}: ${z.prettifyError(parsed.error)}`);
  const { title = basename(folder), skills } = parsed.data;
  const repeated = skills.find(({ id }) => SKILLS.some((skill) => skill.id === id));
  if (repeated) throw new Error(`${file}: the course has a skill "${repeated.id}" already; give yours another id.`);
  return { title, skills };
}

/** The same of the private folder that the site is built with, or of none. */
export function privateCourse(): PrivateCourse {
  const folder = privateFolder();
  return folder === null ? { title: '', skills: [] } : readPrivateCourse(folder);
}

/** Every skill of the site, private ones last. */
export const siteSkills = (): readonly Skill[] => [...SKILLS, ...privateCourse().skills];
