import type { Driver, DriverOutput, DriverSource, Link, Point, Rig, UpToward } from './rig.ts';

/** Gives every name of a bone anew; the same name where nothing changes. */
export type Rename = (bone: string) => string;

/** "bone.switch" taken apart: neither name may hold a dot. */
export function splitSwitch(reference: string): [bone: string, name: string] {
  const dot = reference.indexOf('.');
  return [reference.slice(0, dot), reference.slice(dot + 1)];
}

export function renameInLink(link: Link, rename: Rename): Link {
  if (link.kind === 'follow' || link.kind === 'share') return { ...link, source: rename(link.source) };
  if (link.kind === 'limit') return link;
  const target = inPoint(link.target, rename);
  if (link.kind === 'aim' && link.up) {
    return { ...link, target, up: { ...link.up, toward: inToward(link.up.toward, rename) } };
  }
  if (link.kind === 'reach' && link.pole) return { ...link, target, pole: inPoint(link.pole, rename) };
  return { ...link, target };
}

export function renameInDriver(driver: Driver, rename: Rename): Driver {
  const inputs = driver.inputs.map((input) => ({ ...input, from: inSource(input.from, rename) }));
  return { ...driver, inputs, output: inOutput(driver.output, rename) };
}

/** Every reference to a bone in the rig renamed, and the bones themselves. */
export function renameInRig(rig: Rig, rename: Rename): Rig {
  const bones = rig.bones.map((bone) => ({
    ...bone,
    name: rename(bone.name),
    parent: bone.parent === null ? null : rename(bone.parent),
    ...(bone.links ? { links: bone.links.map((link) => renameInLink(link, rename)) } : {}),
  }));
  if (!rig.drivers) return { ...rig, bones };
  return { ...rig, bones, drivers: rig.drivers.map((driver) => renameInDriver(driver, rename)) };
}

/** The bones that a link reads. */
export function bonesReadByLink(link: Link): string[] {
  return collected((rename) => renameInLink(link, rename));
}

/** The bones that a driver reads or writes to, switch owners among them. */
export function bonesOfDriver(driver: Driver): string[] {
  return collected((rename) => renameInDriver(driver, rename));
}

export function bonesOfSource(source: DriverSource): string[] {
  return collected((rename) => inSource(source, rename));
}

function collected(walk: (rename: Rename) => unknown): string[] {
  const seen: string[] = [];
  walk((bone) => {
    seen.push(bone);
    return bone;
  });
  return seen;
}

function inPoint(point: Point, rename: Rename): Point {
  return { ...point, bone: rename(point.bone) };
}

function inToward(toward: UpToward, rename: Rename): UpToward {
  return 'bone' in toward ? { ...toward, bone: rename(toward.bone) } : toward;
}

function inSwitch(reference: string, rename: Rename): string {
  const [bone, name] = splitSwitch(reference);
  return `${rename(bone)}.${name}`;
}

function inSource(from: DriverSource, rename: Rename): DriverSource {
  if ('switch' in from) return { switch: inSwitch(from.switch, rename) };
  if ('turn' in from) return { turn: { ...from.turn, bone: rename(from.turn.bone) } };
  if ('shift' in from) return { shift: { ...from.shift, bone: rename(from.shift.bone) } };
  return { gap: [inPoint(from.gap[0], rename), inPoint(from.gap[1], rename)] };
}

function inOutput(output: DriverOutput, rename: Rename): DriverOutput {
  if ('switch' in output) return { switch: inSwitch(output.switch, rename) };
  return { ...output, bone: rename(output.bone) };
}
