import { copyAcross, type Reading, type Rig, readRig, reflect } from '../../solver/index.ts';
import { readArguments } from '../arguments.ts';
import { print } from '../output.ts';
import { accept, UsageError } from '../refusal.ts';
import { onlyPath, readRigFile } from '../rigs.ts';
import type { ExitStatus, Verb } from '../verb.ts';

const OPTIONS = { from: { type: 'string' } } as const;

/** Mirrors a rig across its middle plane, x = 0. */
export const mirrorVerb: Verb = {
  help: `
Usage: counterpose mirror RIG.json [--from left|right]

Prints the rig reflected, its sides swapped, as JSON.

  --from left|right  copy that side across instead: its bones, their links and what drives them are made anew on
                     the other side, and replace what stands there under the same names
`,
  async run(args): Promise<ExitStatus> {
    const { values, positionals } = readArguments(args, OPTIONS);
    const side = sideOf(values.from);
    const path = onlyPath(positionals);
    const rig = await readRigFile(path);
    await print(`${JSON.stringify(accept(`${path}, mirrored`, mirrored(rig, side)))}\n`);
    return 0;
  },
};

/** A name can grow past what is readable by swapping its side word, so that the whole is read again. */
function mirrored(rig: Rig, side: 'left' | 'right' | undefined): Reading<Rig> {
  return side === undefined ? readRig(reflect(rig)) : copyAcross(rig, side);
}

function sideOf(text: string | undefined): 'left' | 'right' | undefined {
  if (text === undefined || text === 'left' || text === 'right') return text;
  throw new UsageError(`--from takes left or right, not "${text}"`);
}
