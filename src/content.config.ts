import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { glossarySchema } from './course/glossary-schema.ts';
import { lessonSchema } from './course/lesson-schema.ts';

const folderOf = ({ entry }: { entry: string }) => entry.split('/')[0]!;
const nameOf = ({ entry }: { entry: string }) => entry.replace(/\.json$/, '');

const lessons = defineCollection({
  loader: glob({ base: './content/lessons', pattern: '*/lesson.mdx', generateId: folderOf }),
  schema: lessonSchema,
});

const glossary = defineCollection({
  loader: glob({ base: './content/glossary', pattern: '*.json', generateId: nameOf }),
  schema: glossarySchema,
});

export const collections = { lessons, glossary };
