/** Drivers from every kind of input to every kind of output, no two on one output. */
import type {
  Bone,
  Driver,
  DriverInput,
  DriverMap,
  DriverOutput,
  DriverSource,
  MapShape,
} from '../../../src/solver/document/rig.ts';
import { type Draw, perhaps } from './draw.ts';
import { point } from './drawLinks.ts';

const AXES = ['x', 'y', 'z'] as const;
const CHANNELS = ['move.x', 'move.y', 'move.z', 'turn.x', 'turn.y', 'turn.z'] as const;

export interface Driven {
  bone: Bone;
  /** Bones that drivers writing to it may read. */
  readable: readonly Bone[];
}

const switchNames = (bones: readonly Bone[]): string[] =>
  bones.flatMap((bone) => (bone.switches ?? []).map((own) => `${bone.name}.${own.name}`));

function output(draw: Draw, bone: Bone): DriverOutput {
  const link = draw.often(0.6) && bone.links ? draw.one(bone.links) : undefined;
  if (link?.kind === 'share' && draw.often(0.5)) return { bone: bone.name, link: link.name, field: 'fraction' };
  if (link) return { bone: bone.name, link: link.name, field: 'weight' };
  const switches = switchNames([bone]);
  if (switches.length > 0 && draw.often(0.5)) return { switch: draw.one(switches) };
  return { bone: bone.name, channel: draw.one(CHANNELS) };
}

function source(draw: Draw, readable: readonly Bone[]): DriverSource {
  const names = readable.map((bone) => bone.name);
  const switches = switchNames(readable);
  if (switches.length > 0 && draw.often(0.4)) return { switch: draw.one(switches) };
  if (draw.often(0.4)) return { turn: { bone: draw.one(names), axis: draw.one(AXES) } };
  if (draw.often(0.5)) return { shift: { bone: draw.one(names), axis: draw.one(AXES) } };
  return { gap: [point(draw, names), point(draw, names)] };
}

function shape(draw: Draw): MapShape {
  if (draw.often(0.7)) return draw.one(['straight', 'eased', 'stepped'] as const);
  return {
    bezier: [
      draw.one([0.1, draw.real(0.05, 0.9)]),
      draw.real(-0.5, 1.5),
      draw.one([0.9, draw.real(0.1, 0.95)]),
      draw.real(-0.5, 1.5),
    ],
  };
}

/** How far the map's values go: a little over what the output can take. */
function valueRange(to: DriverOutput): number {
  if ('field' in to) return to.field === 'weight' ? 1.2 : 3;
  if ('switch' in to) return 1.2;
  return to.channel.startsWith('turn') ? 200 : 0.5;
}

function map(draw: Draw, width: number, range: number): DriverMap {
  const count = draw.whole(2, 4);
  const start = draw.real(-width, width / 2);
  const keys = Array.from({ length: count }, (_, i) => {
    const x = start + (i + draw.real(0, 0.9)) * (width / count);
    return [x, draw.real(-range / 3, range)] as const;
  });
  return {
    keys,
    ...perhaps(draw, 0.7, 'shape', () => shape(draw)),
    ...perhaps(draw, 0.6, 'beyond', () => draw.one(['hold', 'extend'] as const)),
  };
}

function input(draw: Draw, readable: readonly Bone[]): DriverInput {
  return {
    from: source(draw, readable),
    ...perhaps(draw, 0.5, 'times', () => draw.one([1, -1, 0, draw.real(-2, 2)])),
  };
}

export function drawDrivers(draw: Draw, choices: readonly Driven[], count: number): Driver[] {
  const able = choices.filter(({ readable }) => readable.length > 0);
  const drivers = new Map<string, Driver>();
  for (let i = 0; i < count && able.length > 0; i++) {
    const { bone, readable } = draw.one(able);
    const to = output(draw, bone);
    const inputs = Array.from({ length: draw.whole(1, 3) }, () => input(draw, readable));
    const width = inputs.some(({ from }) => 'turn' in from) ? 180 : 1.5;
    const driver = { name: `cue_${i}`, inputs, map: map(draw, width, valueRange(to)), output: to };
    if (!drivers.has(JSON.stringify(to))) drivers.set(JSON.stringify(to), driver);
  }
  return [...drivers.values()];
}
