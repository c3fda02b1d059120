import type { Link } from '../document/rig.ts';
import { LINK_RECORD } from '../links/linkKind.ts';
import { kindOf } from '../links/table.ts';
import type { Machine } from '../machine/machine.ts';
import { END, isLinkOp } from '../machine/ops.ts';
import { runUntil } from '../machine/run.ts';
import type { PlaceKind, Program, SingularPlace, State } from '../program.ts';
import { startOn } from './evaluate.ts';

/** A singular place, and where in the probe's code its link stands. */
interface Site extends SingularPlace {
  readonly own: Link;
  readonly at: number;
}

/** The program's code once more, with every link by itself, so that a run can stop before each. */
interface Probe {
  readonly code: Int32Array;
  readonly sites: readonly Site[];
  readonly siteNumbers: ReadonlyMap<string, number>;
}

const probes = new WeakMap<Program, Probe>();

export function probeOf(program: Program): Probe {
  const known = probes.get(program);
  if (known) return known;
  const made = makeProbe(program);
  probes.set(program, made);
  return made;
}

export const siteKey = ({ kind, bone, link }: SingularPlace): string => `${kind} ${bone}.${link}`;

function makeProbe(program: Program): Probe {
  const owned = program.rig.bones.flatMap((bone) => (bone.links ?? []).map((own) => ({ bone: bone.name, own })));
  const code: number[] = [];
  const sites: Site[] = [];
  for (const { op, records } of program.inner.runs) {
    for (const record of records) {
      if (isLinkOp(op)) sites.push(...sitesOf(owned[record[LINK_RECORD.LINK]], code.length));
      code.push(op, 1, ...record);
    }
  }
  code.push(END);
  const siteNumbers = new Map(sites.map((site, number) => [siteKey(site), number]));
  return { code: Int32Array.from(code), sites, siteNumbers };
}

function sitesOf({ bone, own }: { bone: string; own: Link }, at: number): Site[] {
  const kinds = kindOf(own).singular(own);
  return kinds.map((kind: PlaceKind) => ({ kind, bone, link: own.name, own, at }));
}

/** What was measured of a state, and of which of its evaluations. */
interface Measured {
  readonly values: Float64Array;
  evaluation: number;
}

const measurements = new WeakMap<State, Measured>();

/** How near each site was in the state's last evaluation, which is run again if it has not been measured yet. */
export function measure(program: Program, state: State): Float64Array {
  const { sites } = probeOf(program);
  const measured = measurements.get(state) ?? { values: new Float64Array(sites.length), evaluation: -1 };
  measurements.set(state, measured);
  if (measured.evaluation !== state.machine.evaluation) {
    measured.evaluation = state.machine.evaluation;
    runMeasuring(program, state, measured.values);
  }
  return measured.values;
}

/** Runs to the end, so that the state holds once more what it held; flags go to an array of its own. */
function runMeasuring(program: Program, state: State, values: Float64Array): void {
  const { code, sites } = probeOf(program);
  const machine: Machine = { ...state.machine, code, flags: new Int32Array(state.machine.flags.length) };
  startOn(machine, program);
  let at = 0;
  sites.forEach((site, number) => {
    at = runUntil(machine, at, site.at);
    values[number] = kindOf(site.own).nearness(machine, site.at + 2, site.kind);
  });
  runUntil(machine, at, code.length - 1);
}
