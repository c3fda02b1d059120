import { FLAGS, type Flag, type Program, type State } from '../program.ts';

/** The flags of the last evaluation in document order, each once: of a bone those of its switches first, then of its links. */
export function readFlags(program: Program, state: State): Flag[] {
  const { flags } = state.machine;
  const links = program.linkNames.length;
  const result: Flag[] = [];
  let number = 0;
  program.rig.bones.forEach((bone, index) => {
    append(result, flags[links + index], bone.name, null);
    for (const link of bone.links ?? []) append(result, flags[number++], bone.name, link.name);
  });
  return result;
}

function append(result: Flag[], bits: number, bone: string, link: string | null): void {
  if (bits === 0) return;
  FLAGS.forEach((flag, bit) => {
    if (bits & (1 << bit)) result.push({ flag, bone, link });
  });
}
