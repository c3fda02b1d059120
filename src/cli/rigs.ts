import { compile, type Program, type Rig, readRigText } from '../solver/index.ts';
import { readTextFile } from './files.ts';
import { accept, refusalLine, Unusable, UsageError } from './refusal.ts';

/** The path of the one rig that a verb takes. */
export function onlyPath(positionals: readonly string[]): string {
  const [path] = positionals;
  if (path !== undefined && positionals.length === 1) return path;
  throw new UsageError(`one rig is expected, ${positionals.length} are given`);
}

/** The rig of a file. Throws Unusable. */
export async function readRigFile(path: string): Promise<Rig> {
  const text = accept(path, await readTextFile(path));
  return accept(path, readRigText(text));
}

/** A rig ready to be evaluated. Throws Unusable, which walks the cycle, where no order would do. */
export function compileRig(path: string, rig: Rig): Program {
  const compiled = compile(rig);
  if (compiled.ok) return compiled.program;
  const found = `a cycle: ${compiled.cycle.join(' → ')}`;
  throw new Unusable(
    refusalLine(path, { place: '', found, expected: 'bones that can be worked out one after another' }),
  );
}
