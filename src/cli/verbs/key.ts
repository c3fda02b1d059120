import { writeFileSync } from 'node:fs';
import { makeKey, thumbprintText } from '../../delivery/assignment/keys.ts';
import { readArguments } from '../arguments.ts';
import { print } from '../output.ts';
import { Unusable, UsageError } from '../refusal.ts';
import type { ExitStatus, Verb } from '../verb.ts';

/** Makes a key pair for signing assignments. A file that is there is never written over. */
export const keyVerb: Verb = {
  help: `
Usage: counterpose key --out KEY.json

Makes a key pair to sign assignments with, and prints its thumbprint, by which others know it. Keep the file
to yourself: whoever has it signs as you.

  --out KEY.json  where to write it; a file that is there is left alone
`,
  async run(args): Promise<ExitStatus> {
    const { values, positionals } = readArguments(args, { out: { type: 'string' } });
    if (values.out === undefined || positionals.length > 0) throw new UsageError('--out is expected, and nothing else');
    const pair = makeKey();
    try {
      writeFileSync(values.out, `${JSON.stringify(pair, null, 2)}\n`, { flag: 'wx', mode: 0o600 });
    } catch (error) {
      throw new Unusable(`${values.out}: found ${(error as NodeJS.ErrnoException).code}, expected a place to write to`);
    }
    await print(`${values.out}: ${thumbprintText(pair)}\n`);
    return 0;
  },
};
