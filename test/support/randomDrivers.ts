import type {
  Bone,
  DrivenChannel,
  Driver,
  DriverInput,
  DriverMap,
  DriverOutput,
  DriverSource,
  MapShape,
} from '../../src/solver/document/rig.ts';
import { between, chance, pick, type Random, sometimes, whole } from './random.ts';
import { randomPoint } from './randomLinks.ts';

/** A bone with what a driver that writes to it may read. */
export interface Drivable {
  bone: Bone;
  /** Bones that may be read without a cycle. */
  readable: readonly Bone[];
}

const CHANNELS: readonly DrivenChannel[] = ['move.x', 'move.y', 'move.z', 'turn.x', 'turn.y', 'turn.z'];
const AXES = ['x', 'y', 'z'] as const;

const switchesOf = (bones: readonly Bone[]): string[] =>
  bones.flatMap((bone) => (bone.switches ?? []).map((s) => `${bone.name}.${s.name}`));

/** What a driver could write on one bone: its links, its switches, and one of its channels. */
function outputsOf(random: Random, bone: Bone): DriverOutput[] {
  const links = (bone.links ?? []).flatMap((link): DriverOutput[] => [
    { bone: bone.name, link: link.name, field: 'weight' },
    ...(link.kind === 'share' ? [{ bone: bone.name, link: link.name, field: 'fraction' } as const] : []),
  ]);
  const switches = switchesOf([bone]).map((name): DriverOutput => ({ switch: name }));
  return [...links, ...links, ...switches, { bone: bone.name, channel: pick(random, CHANNELS) }];
}

/** How far a map's values should go for what they are written to: 0..1 and a little over, metres or degrees. */
function range(output: DriverOutput): readonly [number, number] {
  if ('field' in output) return output.field === 'weight' ? [-0.1, 1.1] : [-2.5, 2.5];
  if ('switch' in output) return [-0.2, 1.2];
  return output.channel.startsWith('move') ? [-0.2, 0.2] : [-170, 170];
}

function randomSource(random: Random, readable: readonly Bone[]): DriverSource {
  const names = readable.map((bone) => bone.name);
  const switches = switchesOf(readable);
  if (switches.length > 0 && chance(random, 0.5)) return { switch: pick(random, switches) };
  if (chance(random, 0.4)) return { turn: { bone: pick(random, names), axis: pick(random, AXES) } };
  if (chance(random, 0.5)) return { shift: { bone: pick(random, names), axis: pick(random, AXES) } };
  return { gap: [randomPoint(random, names), randomPoint(random, names)] };
}

/** The width over which an input is worth mapping: degrees for a turn, otherwise about one. */
const widthOf = (source: DriverSource): number => ('turn' in source ? 180 : 1);

function randomShape(random: Random): MapShape {
  if (chance(random, 0.7)) return pick(random, ['straight', 'eased', 'stepped'] as const);
  return { bezier: [pick(random, [0, random()]), between(random, -0.5, 1.5), pick(random, [1, random()]), random()] };
}

function randomMap(random: Random, width: number, [least, most]: readonly [number, number]): DriverMap {
  const count = whole(random, 2, 4);
  const start = between(random, -width, width / 2);
  const keys = Array.from(
    { length: count },
    (_, i) => [start + (i + 0.9 * random()) * (width / count), between(random, least, most)] as const,
  );
  return {
    keys,
    ...sometimes(random, 'shape', () => randomShape(random), 0.7),
    ...sometimes(random, 'beyond', () => pick(random, ['hold', 'extend'] as const)),
  };
}

function randomInputs(random: Random, readable: readonly Bone[]): DriverInput[] {
  return Array.from({ length: whole(random, 1, 3) }, () => ({
    from: randomSource(random, readable),
    ...sometimes(random, 'times', () => pick(random, [1, -1, between(random, -2, 2)])),
  }));
}

const keyOf = (output: DriverOutput): string => JSON.stringify(output);

/** Up to `count` drivers, no two on one output. */
export function randomDrivers(random: Random, drivable: readonly Drivable[], count: number, sides: boolean): Driver[] {
  const taken = new Set<string>();
  const drivers: Driver[] = [];
  const able = drivable.filter(({ readable }) => readable.length > 0);
  for (let i = 0; i < count && able.length > 0; i++) {
    const { bone, readable } = pick(random, able);
    const output = pick(random, outputsOf(random, bone));
    if (taken.has(keyOf(output))) continue;
    taken.add(keyOf(output));
    const inputs = randomInputs(random, readable);
    const side = sides ? pick(random, ['', '', '_left', '_right']) : '';
    const map = randomMap(random, widthOf(inputs[0]!.from), range(output));
    drivers.push({ name: `lift_${i}${side}`, inputs, map, output });
  }
  return drivers;
}
