import type { Known } from './known.ts';
import { type Reader, refuse, within } from './reader.ts';
import { readMap } from './readMap.ts';
import { boneName, point, refuseUndeclared, switchName } from './references.ts';
import type { DrivenChannel, Driver, DriverInput, DriverOutput, DriverSource, Point } from './rig.ts';
import { list, needed, optional, record, refuseRepeats, shapes } from './structures.ts';
import { finite, name, oneOf, text, tuple } from './values.ts';
import { quoted } from './words.ts';

const MOST_INPUTS = 32;
const CHANNELS: readonly DrivenChannel[] = ['move.x', 'move.y', 'move.z', 'turn.x', 'turn.y', 'turn.z'];

type BoneAxis = { bone: string; axis: 'x' | 'y' | 'z' };
const boneAxis = record<BoneAxis, Known>('an axis of a bone', {
  bone: needed(boneName),
  axis: needed(oneOf(['x', 'y', 'z'])),
});

const source: Reader<DriverSource, Known> = shapes<DriverSource, Known>(
  'an input: {switch}, {turn: {bone, axis}}, {shift: {bone, axis}} or {gap: [point, point]}',
  {
    switch: record('a switch input', { switch: needed(switchName) }),
    turn: record('a turn input', { turn: needed(boneAxis) }),
    shift: record('a shift input', { shift: needed(boneAxis) }),
    gap: record('a gap input', { gap: needed(tuple<readonly [Point, Point], Known>(2, 'two points', point)) }),
  },
);

const input: Reader<DriverInput, Known> = record('an input', { from: needed(source), times: optional(finite) });

type LinkOutput = Extract<DriverOutput, { link: string }>;

const linkFields = record<LinkOutput, Known>('a link output', {
  bone: needed(boneName),
  link: needed(text),
  field: needed(oneOf(['weight', 'fraction'])),
});

const linkOutput: Reader<LinkOutput, Known> = (value, known) => {
  const output = linkFields(value, known);
  const { links } = known.bones.get(output.bone)!;
  if (!links.has(output.link)) {
    within(['link'], () => refuseUndeclared(output.link, [...links.keys()], `a link on ${quoted(output.bone)}`));
  }
  if (output.field === 'fraction' && links.get(output.link) !== 'share') {
    refuse(`"fraction" of ${quoted(output.link)}, which is no share`, '"weight", or a link that is a share', ['field']);
  }
  return output;
};

const output: Reader<DriverOutput, Known> = shapes<DriverOutput, Known>(
  'an output: {bone, link, field}, {switch} or {bone, channel}',
  {
    link: linkOutput,
    switch: record('a switch output', { switch: needed(switchName) }),
    channel: record('a channel output', { bone: needed(boneName), channel: needed(oneOf(CHANNELS)) }),
  },
);

export const readDriver: Reader<Driver, Known> = record<Driver, Known>('a driver', {
  name: needed(name),
  inputs: needed(list('inputs', input, { least: 1, most: MOST_INPUTS })),
  map: needed(readMap),
  output: needed(output),
});

/** What a driver writes, as it is spoken of: `vane_left.watch.weight`, `wind.together`, `kite.move.x`. */
function nameOf(written: DriverOutput): string {
  if ('switch' in written) return written.switch;
  const field = 'link' in written ? [written.link, written.field] : [written.channel];
  return [written.bone, ...field].join('.');
}

/** Names once each, and one driver at most on each output. */
export function checkDrivers(drivers: readonly Driver[]): void {
  refuseRepeats(drivers, 'driver');
  const writers = new Map<string, string>();
  for (const [i, driver] of drivers.entries()) {
    const written = nameOf(driver.output);
    const key = `${Object.keys(driver.output).length} ${written}`;
    const other = writers.get(key);
    if (other !== undefined) {
      refuse(`a second driver on ${written}, after ${quoted(other)}`, 'one driver at most on each output', [
        i,
        'output',
      ]);
    }
    writers.set(key, driver.name);
  }
}
