import { compile, type Program, type Rig } from '../../src/solver/index.ts';

export function programOf(rig: Rig): Program {
  const compiled = compile(rig);
  if (!compiled.ok) throw new Error(compiled.cycle.join(' → '));
  return compiled.program;
}
