import type { DrivenChannel, Driver, DriverOutput, Rig } from '../../solver/document/rig.ts';
import { splitSwitch } from '../edit/references.ts';
import type { Option } from './piece.ts';

const CHANNELS: readonly DrivenChannel[] = ['move.x', 'move.y', 'move.z', 'turn.x', 'turn.y', 'turn.z'];

/** Everything that a driver could write to, but what another driver already writes. */
export function outputOptions(rig: Rig, own?: Driver): Option[] {
  const taken = new Set(
    (rig.drivers ?? []).filter((driver) => driver !== own).map((driver) => outputValue(driver.output)),
  );
  const outputs = rig.bones.flatMap((bone) => {
    const links = (bone.links ?? []).flatMap((link): DriverOutput[] => {
      const weight: DriverOutput = { bone: bone.name, link: link.name, field: 'weight' };
      return link.kind === 'share' ? [weight, { ...weight, field: 'fraction' }] : [weight];
    });
    const switches = (bone.switches ?? []).map((each): DriverOutput => ({ switch: `${bone.name}.${each.name}` }));
    const channels = CHANNELS.map((channel): DriverOutput => ({ bone: bone.name, channel }));
    return [...links, ...switches, ...channels].map((output) => ({
      value: outputValue(output),
      says: outputSays(output),
      group: bone.name,
    }));
  });
  return outputs.filter((option) => !taken.has(option.value));
}

/** "the weight of watch on vane_left" */
export function outputSays(output: DriverOutput): string {
  if ('switch' in output) return `the switch ${output.switch}`;
  if ('link' in output) return `the ${output.field} of ${output.link} on ${output.bone}`;
  const [channel, axis] = output.channel.split('.');
  return channel === 'move' ? `the move of ${output.bone} along ${axis}` : `the turn of ${output.bone} about ${axis}`;
}

/** The bone under which a driver is shown. */
export function ownerOf(output: DriverOutput): string {
  return 'switch' in output ? splitSwitch(output.switch)[0] : output.bone;
}

export function outputValue(output: DriverOutput): string {
  return JSON.stringify(output);
}

export function outputFrom(value: string): DriverOutput {
  return JSON.parse(value);
}
