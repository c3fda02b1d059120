import type { Bone, Driver, DriverInput, Link, Rig, Vec3 } from '../../solver/document/rig.ts';
import { kindOf, type Requirement } from '../requirements/table.ts';
import { mapInputs, type Values } from './held.ts';
import type { Input, KeepOut } from './inputs.ts';

const scaled = (v: Vec3, factor: number): Vec3 => [v[0] * factor, v[1] * factor, v[2] * factor];

/** The same rig with every length `factor` times as long. Angles, weights and ratios stay. */
export function scaleRig(rig: Rig, factor: number): Rig {
  const result: Rig = { ...rig, bones: rig.bones.map((bone) => scaleBone(bone, factor)) };
  if (rig.drivers) result.drivers = rig.drivers.map((driver) => scaleDriver(driver, factor));
  if (rig.mesh) result.mesh = { ...rig.mesh, positions: rig.mesh.positions.map((x) => x * factor) };
  return result;
}

function scaleBone(bone: Bone, factor: number): Bone {
  const rest = { ...bone.rest, base: scaled(bone.rest.base, factor), length: bone.rest.length * factor };
  return bone.links ? { ...bone, rest, links: bone.links.map((link) => scaleLink(link, factor)) } : { ...bone, rest };
}

function scaleLink(link: Link, factor: number): Link {
  if (link.kind === 'span' && link.restLength !== undefined) return { ...link, restLength: link.restLength * factor };
  if (link.kind === 'limit' && link.move) {
    return { ...link, move: { min: scaled(link.move.min, factor), max: scaled(link.move.max, factor) } };
  }
  return link;
}

/** Inputs in metres count 1/factor as much, so that the map's x stays; a move that comes out grows. */
function scaleDriver(driver: Driver, factor: number): Driver {
  const inputs = driver.inputs.map((input) => scaleInput(input, factor));
  if (!('channel' in driver.output) || !driver.output.channel.startsWith('move')) return { ...driver, inputs };
  const keys = driver.map.keys.map(([x, y]) => [x, y * factor] as const);
  return { ...driver, inputs, map: { ...driver.map, keys } };
}

function scaleInput(input: DriverInput, factor: number): DriverInput {
  const inMetres = 'shift' in input.from || 'gap' in input.from;
  return inMetres ? { ...input, times: (input.times ?? 1) / factor } : input;
}

export function scaleProofInput(input: Input, factor: number): Input {
  return input.channel?.startsWith('move') ? { ...input, min: input.min * factor, max: input.max * factor } : input;
}

export function scaleKeepOut(zone: KeepOut, factor: number): KeepOut {
  return { ...zone, within: zone.within * factor };
}

/** Lengths in a requirement: what is allowed in millimetres, moves that are held, and those of its kind. */
export function scaleRequirement(requirement: Requirement, inputs: readonly Input[], factor: number): Requirement {
  const kind = kindOf(requirement);
  const change = (values: Values) => scaleHeld(values, inputs, factor);
  const longer = kind.scaled?.(requirement, factor) ?? requirement;
  const scaled = kind.withValues?.(longer, change) ?? longer;
  const allowed = kind.unit(requirement) === 'mm' ? scaled.allowed * factor : scaled.allowed;
  return scaled.at ? { ...scaled, allowed, at: change(scaled.at) } : { ...scaled, allowed };
}

/** A response that is a pose, with its moves `factor` times as long; any other as it is. */
export function scaleResponse(response: unknown, inputs: readonly Input[], factor: number): unknown {
  return mapInputs(response, (values) => scaleHeld(values, inputs, factor));
}

function scaleHeld(values: Values, inputs: readonly Input[], factor: number): Values {
  const moves = new Set(inputs.filter((input) => input.channel?.startsWith('move')).map((input) => input.id));
  return Object.fromEntries(Object.entries(values).map(([id, value]) => [id, moves.has(id) ? value * factor : value]));
}
