import { execFile } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { beforeAll, describe, expect, test } from 'vitest';
import { readExerciseFile } from '../../src/course/exercise-files.ts';
import { SITE } from '../../src/course/kit/commands.ts';
import { counterpose, NODE } from '../cli/command.ts';
import { temporaryFolder } from '../cli/folder.ts';
import { layOutSite } from '../support/siteRoot.ts';

const { path } = temporaryFolder();
const root = join(path, 'course');
const workshop = join(path, 'workshop');
const dist = join(path, 'site');
/** As the authors' page names it. */
const [VARIABLE] = SITE.split('=') as [string];
const LESSON = 'lessons/7.1-our-bellows';

const built = (file: string) => readFileSync(join(dist, file), 'utf8');
const builtJson = (file: string) => JSON.parse(built(file));

function change(file: string, edit: (text: string) => string): void {
  writeFileSync(join(workshop, file), edit(readFileSync(join(workshop, file), 'utf8')));
}

/** What stands in the course's folder but for packages and caches. */
function filesOfCourse(): string[] {
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' });
  return files.filter((file) => !/^(node_modules|\.astro)\b/.test(file)).sort();
}

/** A lesson with an exercise and a skill of its own, and an exercise in place of one of the course's. */
async function writeWorkshop(): Promise<void> {
  const lay = (...args: string[]) => counterpose(['new', ...args, '--content', workshop]);
  await lay('lesson', '7.1', 'our-bellows');
  await lay('exercise', 'bellows-lid');
  await lay('exercise', 'one-vane');
  const skill = { id: 'lid', name: 'Open a lid by its bellows', lesson: '7.1' };
  writeFileSync(join(workshop, 'course.json'), JSON.stringify({ title: 'The Saltmarsh workshop', skills: [skill] }));
  writeFileSync(join(workshop, LESSON, 'lid.json'), JSON.stringify({ says: 'The lid is of oak.' }));
  change(`${LESSON}/lesson.mdx`, (text) => {
    const head = text
      .replace('exercises: []', 'exercises: [bellows-lid]')
      .replace(/^title: .*$/m, 'title: Our own bellows');
    const [, start, rest] = /^(---.*?---\n)(.*)$/s.exec(head)!;
    return `${start}\nimport lid from './lid.json';\n${rest}\n{lid.says}\n\n<Exercise id="bellows-lid" />\n`;
  });
  change('exercises/bellows-lid/exercise.json', (text) => {
    const exercise = { ...JSON.parse(text), lesson: '7.1', title: 'A lid', graded: true, skills: ['lid'] };
    return JSON.stringify(exercise);
  });
}

describe('the site built with a private folder', { timeout: 300_000 }, () => {
  let before: string[];

  beforeAll(async () => {
    mkdirSync(root);
    layOutSite(root);
    before = filesOfCourse();
    await writeWorkshop();
    const args = ['--env-file=scripts/astro.env', 'node_modules/astro/bin/astro.mjs', 'build', '--outDir', dist];
    const env = { ...process.env, NODE_ENV: 'production', [VARIABLE]: '../workshop' };
    await promisify(execFile)(NODE, args, { cwd: root, env, maxBuffer: 2 ** 26 });
  }, 300_000);

  test('has its lesson, with what stands beside it and its exercise, in a chapter named by course.json', () => {
    const lesson = built(`${LESSON}/index.html`);
    expect(lesson).toContain('7 · The Saltmarsh workshop · 8 minutes');
    expect(lesson).toContain('The lid is of oak.');
    expect(lesson).toContain('<section class="exercise" id="exercise-bellows-lid"');
    expect(built('contents/index.html')).toMatch(
      /<h2 id="chapter-7">.*The Saltmarsh workshop.*<a href="\.\.\/lessons\/7\.1-our-bellows\/index\.html">Our own bellows</s,
    );
  });

  test('has its exercise, which leads to the lesson', () => {
    expect(built('exercises/bellows-lid/index.html')).toContain(
      `<a href="../../${LESSON}/index.html">7.1 Our own bellows`,
    );
    expect(builtJson('exercises/bellows-lid.json')).toEqual(readExerciseFile(workshop, 'bellows-lid'));
  });

  test('has its exercise in place of the course’s own of the same id', () => {
    expect(builtJson('exercises/one-vane.json')).toEqual(readExerciseFile(workshop, 'one-vane'));
  });

  test('finds the lesson, counts the skill, and offers what may be set', () => {
    const addresses = builtJson('search.json').map(({ address }: { address: string }) => address);
    expect(addresses).toContain(`/${LESSON}/`);
    expect(built('skills/index.html')).toMatch(
      /7 The Saltmarsh workshop.*data-skill="lid".*Open a lid by its bellows/s,
    );
    expect(builtJson('skills.json').skills.at(-1).id).toBe('lid');
    expect(builtJson('assignment.json').exercises.at(-1)).toMatchObject({
      id: 'bellows-lid',
      chapter: { number: '7', title: 'The Saltmarsh workshop' },
      lesson: { number: '7.1', title: 'Our own bellows' },
      skills: ['Open a lid by its bellows'],
      audit: null,
    });
  });

  test('leaves nothing of the folder among the course’s own files', () => {
    expect(filesOfCourse()).toEqual(before);
  });
});
