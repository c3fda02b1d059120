import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Files } from '../../course/kit/files.ts';
import { newExercise } from '../../course/kit/new-exercise.ts';
import { newLesson } from '../../course/kit/new-lesson.ts';
import { readArguments } from '../arguments.ts';
import { OWN } from '../content.ts';
import { print } from '../output.ts';
import { Unusable, UsageError } from '../refusal.ts';
import type { ExitStatus, Verb } from '../verb.ts';

const OPTIONS = { content: { type: 'string' } } as const;
const WORDS = /^[a-z0-9]+(-[a-z0-9]+)*$/;

/** Lays out the folder of a new lesson or exercise. */
export const newVerb: Verb = {
  help: `
Usage: counterpose new exercise ID [--content DIR]
       counterpose new lesson NUMBER SLUG [--content DIR]

Lays out a folder that can be read at once. counterpose check-content then says what is still to be written, and
counterpose audit whether right rigs pass and wrong ones are told apart.

  --content DIR  in this folder of lessons and exercises, which is made where there is none
`,
  async run(args): Promise<ExitStatus> {
    const { values, positionals } = readArguments(args, OPTIONS);
    const [what, ...rest] = positionals;
    const content = values.content === undefined ? OWN : resolve(values.content);
    if (what === 'exercise') return lay(join(content, 'exercises', idOf(rest)), newExercise(rest[0]!));
    if (what === 'lesson')
      return lay(join(content, 'lessons', lessonFolder(rest)), lessonFiles(rest[0]!, values.content !== undefined));
    throw new UsageError(`"${what ?? ''}" cannot be laid out, expected exercise or lesson`);
  },
};

function idOf([id, ...more]: readonly string[]): string {
  if (id === undefined || more.length > 0) throw new UsageError('one id is expected');
  if (!WORDS.test(id)) throw new UsageError(`"${id}" is no id, expected small letters, digits and single hyphens`);
  return id;
}

function lessonFolder([number, slug, ...more]: readonly string[]): string {
  if (slug === undefined || more.length > 0) throw new UsageError('a number and a slug are expected');
  if (!WORDS.test(slug))
    throw new UsageError(`"${slug}" is no slug, expected small letters, digits and single hyphens`);
  return `${number}-${slug}`;
}

function lessonFiles(number: string, isPrivate: boolean): Files {
  try {
    return newLesson(number, isPrivate);
  } catch (error) {
    throw new UsageError((error as Error).message);
  }
}

async function lay(folder: string, files: Files): Promise<ExitStatus> {
  if (existsSync(folder)) throw new Unusable(`${folder}: is there already, expected a new folder`);
  mkdirSync(folder, { recursive: true });
  for (const [name, content] of Object.entries(files)) {
    const text = typeof content === 'string' ? content : `${JSON.stringify(content, null, 2)}\n`;
    writeFileSync(join(folder, name), text);
    await print(`${join(folder, name)}\n`);
  }
  return 0;
}
