import type { Places } from '../compile/places.ts';
import type { DriverOutput } from '../document/rig.ts';
import { SWITCH_CLAMPED, WEIGHT_CLAMPED } from '../machine/flagBits.ts';
import type { Machine } from '../machine/machine.ts';

/** A record of an output: kind, where in memory it goes, whose flag is raised, where a switch's range lies. */
export const OUTPUT_INTS = 4;
const WEIGHT = 0;
const PLAIN = 1;
const SWITCH = 2;

/** A number this little outside its range is rounding. */
const CLAMP_QUIETLY = 1e-9;

export function outputCode(output: DriverOutput, places: Places): number[] {
  if ('switch' in output) {
    const { min, max, sliding, flag } = places.switchRange(output.switch);
    return [SWITCH, places.switch(output.switch), flag, places.constant(min, max, sliding ? 1 : 0)];
  }
  if ('channel' in output) return [PLAIN, places.drivenChannel(output.bone, output.channel), 0, 0];
  const link = places.link(output.bone, output.link);
  if (output.field === 'fraction') return [PLAIN, places.fraction(link, 0), 0, 0];
  return [WEIGHT, places.weight(link), link, 0];
}

/** Writes the value to the output at `at` of the code. */
export function writeOutput(machine: Machine, at: number, value: number): void {
  const { code, memory: m } = machine;
  m[code[at + 1]] = code[at] === PLAIN ? value : within(machine, at, value);
}

function within({ code, memory: m, flags }: Machine, at: number, value: number): number {
  const isSwitch = code[at] === SWITCH;
  const range = code[at + 3];
  const min = isSwitch ? m[range] : 0;
  const max = isSwitch ? m[range + 1] : 1;
  if (value < min - CLAMP_QUIETLY || value > max + CLAMP_QUIETLY) {
    flags[code[at + 2]] |= isSwitch ? SWITCH_CLAMPED : WEIGHT_CLAMPED;
  }
  const clamped = Math.min(max, Math.max(min, value));
  if (!isSwitch || m[range + 2] === 1) return clamped;
  return clamped - min <= max - clamped ? min : max;
}
