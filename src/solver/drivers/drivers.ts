import type { Places } from '../compile/places.ts';
import type { Driver } from '../document/rig.ts';
import type { Machine, Run } from '../machine/machine.ts';
import { INPUT_INTS, inputCode, inputValue } from './inputs.ts';
import { mapConstants, mapped } from './map.ts';
import { OUTPUT_INTS, outputCode, writeOutput } from './outputs.ts';

/** A record: map, output, number of inputs, inputs. */
const OUTPUT = 1;
const COUNT = OUTPUT + OUTPUT_INTS;
const INPUTS = COUNT + 1;
const STRIDE = INPUT_INTS;

export function driverCode(driver: Driver, places: Places): number[] {
  const map = places.constant(...mapConstants(driver.map));
  const inputs = driver.inputs.flatMap((input) => inputCode(input.from, input.times ?? 1, places));
  return [map, ...outputCode(driver.output, places), driver.inputs.length, ...inputs];
}

/** Each driver: the sum of its inputs, times their factors, through its map to its output. */
export const drivers: Run = (machine, at, count) => {
  let next = at;
  for (let i = 0; i < count; i++) next = driver(machine, next);
  return next;
};

function driver(machine: Machine, at: number): number {
  const { code, memory: m } = machine;
  const end = at + INPUTS + STRIDE * code[at + COUNT];
  let sum = 0;
  for (let input = at + INPUTS; input < end; input += STRIDE) {
    sum += m[code[input + 1]] * inputValue(code, m, input);
  }
  writeOutput(machine, at + OUTPUT, mapped(m, code[at], sum));
  return end;
}
