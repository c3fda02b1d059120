import { isPrivateNumber, lessonOf } from './outline.ts';
import { z } from './zod.ts';

const sentence = z.string().trim().min(10, 'a whole sentence');
const slug = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'lower-case words joined by hyphens');

const lessonNumber = z.string().regex(/^[1-9]\.[1-9]$/, 'chapter and lesson, as "3.1"');
const isPlanned = (number: string) => lessonOf(number) !== undefined;

/** What stands above the text of content/lessons/<number>-<slug>/lesson.mdx. A misspelt field is an error. */
export const lessonSchema = z.strictObject({
  number: lessonNumber
    .refine(isPlanned, 'a lesson of src/course/outline.ts')
    .describe('Chapter and lesson. The folder name starts with it.'),
  title: sentence.describe('As it stands in the contents.'),
  idea: sentence.describe('The one idea, in one sentence. It stands in italics under the title.'),
  why: sentence.describe('Why it matters when an animator opens the rig: one or two sentences.'),
  minutes: z.int().min(5).max(12).describe('Reading time, without the exercises.'),
  skills: z.array(slug).min(1).describe('What mastery and review keep count of.'),
  exercises: z.array(slug).default([]).describe('Ids of the exercises shown, in order.'),
  terms: z.array(slug).default([]).describe('Glossary entries that the lesson uses; each <Term> must be among them.'),
  card: z.array(sentence).min(2).max(6).describe('The printable card: what to keep in mind, a line each.'),
});

/** The same in a private folder: lessons of its own have a chapter of their own. */
export const privateLessonSchema = lessonSchema.extend({
  number: lessonNumber.refine(
    (number) => isPlanned(number) || isPrivateNumber(number),
    'a lesson of the course’s contents, or "7.1" to "7.9"',
  ),
});

export type LessonHead = z.infer<typeof lessonSchema>;
