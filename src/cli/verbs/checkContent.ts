import { shortagesOf } from '../../course/exercise-shortages.ts';
import type { ExerciseDefinition } from '../../grader/index.ts';
import { readArguments } from '../arguments.ts';
import { Exercises } from '../content.ts';
import { print } from '../output.ts';
import { inOrder } from '../pool.ts';
import { Progress } from '../progress.ts';
import type { CheckTask } from '../threads/check.ts';
import type { ExitStatus, Verb } from '../verb.ts';

const OPTIONS = { content: { type: 'string' } } as const;

/** Opens the exercises, proves what they hold, audits each quickly, and says what is at fault. */
export const checkContentVerb: Verb = {
  help: `
Usage: counterpose check-content [ID…] [--content DIR]

Opens the exercises in every structure and at every size, proves their start, references and wrong turns, and
audits each quickly as it is drawn. Prints a line for each fault and exits with 1 if there is any.

  --content DIR  check those of this folder of lessons and exercises too
`,
  async run(args): Promise<ExitStatus> {
    const { values, positionals } = readArguments(args, OPTIONS);
    const exercises = new Exercises(values.content);
    const ids = positionals.length > 0 ? positionals : exercises.ids();
    const opened = ids.map((id) => ({ id, ...opening(exercises, id) }));
    const tasks = opened.flatMap((one) => one.tasks);
    const url = new URL('../threads/check.ts', import.meta.url);
    const checks = inOrder<CheckTask, string[]>(url, { contentDir: values.content }, tasks);
    const progress = new Progress(tasks.length, 'variants checked');
    let faults = 0;
    for (const { id, tasks, faults: found } of opened) {
      for (const _ of tasks) {
        found.push(...(await checks.next()).value);
        progress.step();
      }
      faults += found.length;
      await print(found.length ? `${found.join('\n')}\n` : `${id}: sound\n`);
    }
    await checks.return(undefined);
    progress.end();
    return faults > 0 ? 1 : 0;
  },
};

/** What to check in an exercise, and what it lacks at first sight; one that cannot be read is a fault like others. */
function opening(exercises: Exercises, id: string): { tasks: CheckTask[]; faults: string[] } {
  try {
    const { definition } = exercises.known(id);
    return { tasks: tasksFor(definition), faults: shortagesOf(definition) };
  } catch (error) {
    if (exercises.ids().includes(id)) return { tasks: [], faults: [(error as Error).message] };
    throw error;
  }
}

/** Every structure at the first size, and the first structure at every size; all together is for the full audit. */
function tasksFor({ id, structures, sizes }: ExerciseDefinition): CheckTask[] {
  const atFirstSize = structures.map((_, index) => index);
  const atOthers = sizes.slice(1).map((_, index) => (index + 1) * structures.length);
  return [...atFirstSize, ...atOthers].map((seed) => ({ id, seed, audit: seed === 0 }));
}
