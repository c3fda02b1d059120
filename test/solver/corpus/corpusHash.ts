import { compile, type SolveResult, solve } from '../../../src/solver/index.ts';
import { type BitHash, bitHash } from './bitHash.ts';
import { corpus } from './corpus.ts';

/** One hash over every bit of every result of the corpus. Needs nothing but the language, so it runs in any page too. */
export function corpusHash(): string {
  const hash = bitHash();
  for (const { rig, poses } of corpus()) {
    const compiled = compile(rig);
    if (!compiled.ok) throw new Error(`a rig of the corpus has a cycle: ${compiled.cycle.join(' → ')}`);
    for (const pose of poses) addResult(hash, solve(compiled.program, pose));
  }
  return hash.digest();
}

function addResult(hash: BitHash, { bones, weights, flags }: SolveResult): void {
  for (const [name, { matrix }] of Object.entries(bones)) {
    hash.addText(name);
    hash.addNumbers(matrix);
  }
  for (const [name, weight] of Object.entries(weights)) {
    hash.addText(name);
    hash.addNumbers([weight]);
  }
  for (const { flag, bone, link } of flags) hash.addText(`${flag} ${bone} ${link}`);
}
