/** Running one link of many bones alone, from wherever the bones stand: what a link costs without the bones' own poses. */
import { createState, evaluate, type Rig, restPose, type State } from '../../src/solver/index.ts';
import { isLinkOp, RUNS } from '../../src/solver/machine/ops.ts';
import { programOf } from './programOf.ts';

export interface LinkAlone {
  readonly state: State;
  /** Runs the links of all bones once more. */
  run(): void;
}

/** The rig's links are all of one kind, so they come in one run. */
export function linkAlone(rig: Rig): LinkAlone {
  const program = programOf(rig);
  const state = createState(program);
  evaluate(program, state, restPose(program));
  const { machine } = state;
  const { code } = machine;
  let at = 0;
  while (!isLinkOp(code[at])) at = RUNS[code[at]](machine, at + 2, code[at + 1]);
  const one = RUNS[code[at]];
  const [start, count] = [at + 2, code[at + 1]];
  return { state, run: () => void one(machine, start, count) };
}
