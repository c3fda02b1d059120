import { readText } from '../../solver/document/readText.ts';
import {
  type Pose,
  type Program,
  poseReader,
  type Rig,
  readPoseText,
  type SolveResult,
  solve,
} from '../../solver/index.ts';
import { readArguments } from '../arguments.ts';
import { readTextFile } from '../files.ts';
import { batchesOfLines } from '../lines.ts';
import { print } from '../output.ts';
import { accept, refusalLine, Unusable, UsageError } from '../refusal.ts';
import { compileRig, onlyPath, readRigFile } from '../rigs.ts';
import type { ExitStatus, Verb } from '../verb.ts';

const OPTIONS = { pose: { type: 'string' }, poses: { type: 'string' } } as const;

/** Results are held back to this many characters, so that many small ones go out together. */
const HELD_BACK_MAX = 64 * 1024;

/** Evaluates a rig in one pose, or in each of those that come in. */
export const solveVerb: Verb = {
  help: `
Usage: counterpose solve RIG.json [--pose POSE.json]
       counterpose solve RIG.json --poses -

Prints where every bone stands, as JSON: {"bones":{NAME:{"matrix":[16 numbers]}},"weights":{"bone.link":n},
"flags":[{"flag","bone","link"}]}. Matrices are column-major and in rig space.

  --pose POSE.json  the pose; the rest pose where none is given
  --poses -         one pose a line from standard input, one result a line out, in the same order; a line that
                    cannot be used ends the run, and the results before it stand
`,
  async run(args): Promise<ExitStatus> {
    const { values, positionals } = readArguments(args, OPTIONS);
    if (values.pose !== undefined && values.poses !== undefined) {
      throw new UsageError('--pose and --poses exclude each other');
    }
    if (values.poses !== undefined && values.poses !== '-') {
      throw new UsageError('--poses takes - only, for standard input');
    }
    const path = onlyPath(positionals);
    const rig = await readRigFile(path);
    const program = compileRig(path, rig);
    if (values.poses === '-') await solveLines(rig, program);
    else await print(resultLine(values.pose ?? path, program, await readPose(rig, values.pose)));
    return 0;
  },
};

async function readPose(rig: Rig, path: string | undefined): Promise<Pose> {
  if (path === undefined) return {};
  const text = accept(path, await readTextFile(path));
  return accept(path, readPoseText(text, rig));
}

/** Ends at the first line that cannot be used, after what was made of the lines before it. */
async function solveLines(rig: Rig, program: Program): Promise<void> {
  const read = poseReader(rig);
  for await (const lines of batchesOfLines(process.stdin)) {
    let held = '';
    try {
      for (const line of lines) {
        const source = `standard input, line ${line.number}`;
        held += resultLine(source, program, accept(source, readText(accept(source, line.text), read)));
        if (held.length < HELD_BACK_MAX) continue;
        await print(held);
        held = '';
      }
    } finally {
      await print(held);
    }
  }
}

/** JSON has no infinite numbers: a pose that leads to one is refused. */
function resultLine(source: string, program: Program, pose: Pose): string {
  const result = solve(program, pose);
  const vast = beyondNumbers(result);
  if (vast === undefined) return `${JSON.stringify(result)}\n`;
  const found = `a pose that takes ${vast} beyond the largest number`;
  throw new Unusable(refusalLine(source, { place: '', found, expected: 'one that can be worked out' }));
}

function beyondNumbers({ bones, weights }: SolveResult): string | undefined {
  const bone = Object.keys(bones).find((name) => !bones[name]!.matrix.every(Number.isFinite));
  return bone ?? Object.keys(weights).find((name) => !Number.isFinite(weights[name]));
}
