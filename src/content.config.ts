import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { privateLessonsFolder } from './course/content-folders.ts';
import { glossarySchema } from './course/glossary-schema.ts';
import { lessonSchema, privateLessonSchema } from './course/lesson-schema.ts';

const folderOf = ({ entry }: { entry: string }) => entry.split('/')[0]!;
const nameOf = ({ entry }: { entry: string }) => entry.replace(/\.json$/, '');

const lessonsIn = (base: string) => glob({ base, pattern: '*/lesson.mdx', generateId: folderOf });

const lessons = defineCollection({ loader: lessonsIn('./content/lessons'), schema: lessonSchema });

const folder = privateLessonsFolder();
const privateLessons = defineCollection({
  loader: folder === null ? () => [] : lessonsIn(folder),
  schema: privateLessonSchema,
});

const glossary = defineCollection({
  loader: glob({ base: './content/glossary', pattern: '*.json', generateId: nameOf }),
  schema: glossarySchema,
});

export const collections = { lessons, privateLessons, glossary };
