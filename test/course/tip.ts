import { readFileSync } from 'node:fs';
import { compile, poseReader, readRig, solve } from '../../src/solver/index.ts';

/** Base and tip of a bone of a rig file in a pose document: metres, rig space. Throws where either is refused. */
export function endsOf(rigFile: string, bone: string, poseDocument: unknown) {
  const rig = value(readRig(JSON.parse(readFileSync(rigFile, 'utf8'))));
  const compiled = compile(rig);
  if (!compiled.ok) throw new Error(`a cycle: ${compiled.cycle.join(' → ')}`);
  const { matrix } = solve(compiled.program, value(poseReader(rig)(poseDocument))).bones[bone]!;
  const { length } = rig.bones.find(({ name }) => name === bone)!.rest;
  const along = (metres: number) => [0, 1, 2].map((row) => matrix[12 + row]! + matrix[8 + row]! * metres);
  return { base: along(0), tip: along(length) };
}

function value<T>(reading: { ok: true; value: T } | { ok: false; refusal: unknown }): T {
  if (!reading.ok) throw new Error(`refused: ${JSON.stringify(reading.refusal)}`);
  return reading.value;
}
