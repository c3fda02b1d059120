import { type Rename, renameInDriver } from '../document/renaming.ts';
import type { Driver, DriverInput, DriverMap, DriverOutput, DriverSource } from '../document/rig.ts';
import { negate } from './values.ts';

/** Whether the number that is read has the opposite sign in a mirrored frame. */
function isOpposite(source: DriverSource): boolean {
  if ('turn' in source) return source.turn.axis !== 'x';
  return 'shift' in source && source.shift.axis === 'x';
}

const reflectInput = (input: DriverInput): DriverInput =>
  isOpposite(input.from) ? { ...input, times: negate(input.times ?? 1) } : input;

const OPPOSITE_CHANNELS: ReadonlySet<string> = new Set(['move.x', 'turn.y', 'turn.z']);

function reflectMap(map: DriverMap, output: DriverOutput): DriverMap {
  if (!('channel' in output) || !OPPOSITE_CHANNELS.has(output.channel)) return map;
  return { ...map, keys: map.keys.map(([x, y]) => [x, negate(y)] as const) };
}

/** A driver across x = 0, with every bone that is named renamed. Its own name stays. */
export function reflectDriver(driver: Driver, rename: Rename): Driver {
  const inputs = driver.inputs.map(reflectInput);
  return renameInDriver({ ...driver, inputs, map: reflectMap(driver.map, driver.output) }, rename);
}
