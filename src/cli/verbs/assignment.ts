import { writeFileSync } from 'node:fs';
import type { KeyPair } from '../../delivery/assignment/assignment.ts';
import { readKeyPair, thumbprintText } from '../../delivery/assignment/keys.ts';
import { makeAssignment, type Plan } from '../../delivery/assignment/makeAssignment.ts';
import { sign } from '../../delivery/assignment/sign.ts';
import { readText } from '../../solver/document/readText.ts';
import { readArguments } from '../arguments.ts';
import { Exercises } from '../content.ts';
import { readTextFile } from '../files.ts';
import { print } from '../output.ts';
import { accept, UsageError } from '../refusal.ts';
import type { ExitStatus, Verb } from '../verb.ts';

const OPTIONS = { key: { type: 'string' }, out: { type: 'string' }, content: { type: 'string' } } as const;

/** Makes an assignment from an instructor's plan: fills in the exercises as the course has them now, and signs it. */
export const assignmentVerb: Verb = {
  help: `
Usage: counterpose assignment PLAN.json [--key KEY.json] --out A.json [--content DIR]

Makes an assignment that carries its exercises. A plan is JSON with id, title, exercises (id, weight and
perhaps tolerances) and passMark, and perhaps opens, due, late, attempts and house.

  --key KEY.json  sign it with this key pair; counterpose key makes one
  --out A.json    where to write it
  --content DIR   look in this folder of lessons and exercises too
`,
  async run(args): Promise<ExitStatus> {
    const { values, positionals } = readArguments(args, OPTIONS);
    const [path] = positionals;
    if (path === undefined || positionals.length > 1) throw new UsageError('one plan is expected');
    if (values.out === undefined) throw new UsageError('--out is expected');
    const exercises = new Exercises(values.content);
    const plan = accept(path, readText(accept(path, await readTextFile(path)), anyValue)) as Plan;
    const assignment = accept(
      path,
      makeAssignment(plan, (id) => exercises.get(id)?.definition ?? null),
    );
    const pair = values.key === undefined ? null : await readKey(values.key);
    writeFileSync(values.out, pair ? `${sign(assignment, pair)}\n` : `${JSON.stringify(assignment, null, 2)}\n`);
    const signed = pair ? `signed by ${thumbprintText(pair)}` : 'signed by nobody';
    await print(`${values.out}: ${assignment.title}, ${assignment.exercises.length} exercises, ${signed}\n`);
    return 0;
  },
};

const anyValue = (value: unknown) => ({ ok: true, value }) as const;

async function readKey(path: string): Promise<KeyPair> {
  return accept(path, readText(accept(path, await readTextFile(path)), readKeyPair));
}
