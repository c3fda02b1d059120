import type { Driver, DriverInput, DriverMap, DriverOutput, DriverSource } from '../document/rig.ts';
import { negate, type Rename, reflectPoint, renameOwner } from './values.ts';

function reflectSource(source: DriverSource, rename: Rename): DriverSource {
  if ('switch' in source) return { switch: renameOwner(source.switch, rename) };
  if ('turn' in source) return { turn: { ...source.turn, bone: rename(source.turn.bone) } };
  if ('shift' in source) return { shift: { ...source.shift, bone: rename(source.shift.bone) } };
  return { gap: [reflectPoint(source.gap[0], rename), reflectPoint(source.gap[1], rename)] };
}

/** Whether the number that is read has the opposite sign in a mirrored frame. */
function isOpposite(source: DriverSource): boolean {
  if ('turn' in source) return source.turn.axis !== 'x';
  return 'shift' in source && source.shift.axis === 'x';
}

const reflectInput = (input: DriverInput, rename: Rename): DriverInput => ({
  ...input,
  from: reflectSource(input.from, rename),
  ...(isOpposite(input.from) && { times: negate(input.times ?? 1) }),
});

function reflectOutput(output: DriverOutput, rename: Rename): DriverOutput {
  if ('switch' in output) return { switch: renameOwner(output.switch, rename) };
  return { ...output, bone: rename(output.bone) };
}

const OPPOSITE_CHANNELS: ReadonlySet<string> = new Set(['move.x', 'turn.y', 'turn.z']);

function reflectMap(map: DriverMap, output: DriverOutput): DriverMap {
  if (!('channel' in output) || !OPPOSITE_CHANNELS.has(output.channel)) return map;
  return { ...map, keys: map.keys.map(([x, y]) => [x, negate(y)] as const) };
}

/** A driver across x = 0, with every bone that is named renamed. Its own name stays. */
export const reflectDriver = (driver: Driver, rename: Rename): Driver => ({
  ...driver,
  inputs: driver.inputs.map((input) => reflectInput(input, rename)),
  map: reflectMap(driver.map, driver.output),
  output: reflectOutput(driver.output, rename),
});
