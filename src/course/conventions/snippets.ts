import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { compile, type Pose, type Rig, readPose, readRig, solve } from '../../solver/index.ts';

/** A small rig in a pose that shows one convention; what it gives is computed, never written down. */
export interface Snippet {
  says: string;
  rig: Rig;
  pose: Pose;
  /** The bone whose matrix is shown. */
  bone: string;
  /** The link or driver that is shown. */
  link?: string;
  driver?: string;
}

const folder = join(process.cwd(), 'content/conventions');

/** The snippets by name, without their numbers: "aim-up". Throws, naming the file, where one cannot be read. */
export function snippets(): ReadonlyMap<string, Snippet> {
  const files = readdirSync(folder).filter((file) => file.endsWith('.json'));
  return new Map(files.map((file) => [file.replace(/^\d+-|\.json$/g, ''), readSnippet(file)]));
}

function readSnippet(file: string): Snippet {
  const snippet = JSON.parse(readFileSync(join(folder, file), 'utf8')) as Snippet;
  const rig = readRig(snippet.rig);
  if (!rig.ok) throw new Error(`${file}, at /rig${rig.refusal.place}: expected ${rig.refusal.expected}`);
  const pose = readPose(snippet.pose, rig.value);
  if (!pose.ok) throw new Error(`${file}, at /pose${pose.refusal.place}: expected ${pose.refusal.expected}`);
  return { ...snippet, rig: rig.value, pose: pose.value };
}

/** The world matrix of a bone of the snippet, 16 numbers, column-major. */
export function matrixOf({ rig, pose }: Snippet, bone: string): number[] {
  const compiled = compile(rig);
  if (!compiled.ok) throw new Error(`a cycle: ${compiled.cycle.join(' → ')}`);
  return solve(compiled.program, pose).bones[bone]!.matrix;
}
