import type { Driver, DriverSource } from '../../../solver/document/rig.ts';
import { swapSide } from '../../../solver/index.ts';
import { type Vary, varyDrivers } from '../variation.ts';

type Keys = Driver['map']['keys'];
const withKeys = (driver: Driver, keys: Keys): Driver => ({ ...driver, map: { ...driver.map, keys } });

/** The driver forgotten. */
export const dropDriver: Vary = (rig) => varyDrivers(rig, () => [['forgotten', null]]);

/** The map the wrong way round: its outputs in the other order. */
export const invertMap: Vary = (rig) =>
  varyDrivers(rig, (driver) => {
    const outputs = driver.map.keys.map(([, y]) => y).reverse();
    const keys = driver.map.keys.map(([x], i) => [x, outputs[i]!] as const);
    return [['map the wrong way round', withKeys(driver, keys)]];
  });

/** The map moved along, or up, by a quarter of its range. */
export const shiftMap: Vary = (rig) =>
  varyDrivers(rig, (driver) => {
    const xs = driver.map.keys.map(([x]) => x);
    const ys = driver.map.keys.map(([, y]) => y);
    const alongBy = (xs.at(-1)! - xs[0]!) / 4;
    const upBy = (Math.max(...ys) - Math.min(...ys)) / 4;
    return [
      [
        'map moved along',
        withKeys(
          driver,
          driver.map.keys.map(([x, y]) => [x + alongBy, y]),
        ),
      ],
      [
        'map moved down',
        withKeys(
          driver,
          driver.map.keys.map(([x, y]) => [x, y - upBy]),
        ),
      ],
    ];
  });

/** The map in steps. */
export const stepMap: Vary = (rig) =>
  varyDrivers(rig, (driver) => [['map in steps', { ...driver, map: { ...driver.map, shape: 'stepped' } }]]);

/** The input's sign, or half of it. */
export const resignInput: Vary = (rig) =>
  varyDrivers(rig, (driver) =>
    driver.inputs.flatMap((input, at) =>
      [-1, 0.5].map((factor): [string, Driver] => [
        `input ${at + 1} times ${factor}`,
        {
          ...driver,
          inputs: driver.inputs.map((one, i) => (i === at ? { ...one, times: (input.times ?? 1) * factor } : one)),
        },
      ]),
    ),
  );

/** The other side's bone read, or written to. */
export const resideDriver: Vary = (rig) =>
  varyDrivers(rig, (driver) => {
    const { output } = driver;
    const inputs = driver.inputs.map((input) => ({ ...input, from: residedSource(input.from) }));
    const changes: [string, Driver][] = [["reads the other side's", { ...driver, inputs }]];
    if ('bone' in output) {
      changes.push(["writes to the other side's", { ...driver, output: { ...output, bone: swapSide(output.bone) } }]);
    }
    return changes.filter(([, changed]) => JSON.stringify(changed) !== JSON.stringify(driver));
  });

function residedSource(from: DriverSource): DriverSource {
  if ('turn' in from) return { turn: { ...from.turn, bone: swapSide(from.turn.bone) } };
  if ('shift' in from) return { shift: { ...from.shift, bone: swapSide(from.shift.bone) } };
  if ('gap' in from) {
    const [a, b] = from.gap;
    return {
      gap: [
        { ...a, bone: swapSide(a.bone) },
        { ...b, bone: swapSide(b.bone) },
      ],
    };
  }
  const [bone, name] = from.switch.split('.') as [string, string];
  return { switch: `${swapSide(bone)}.${name}` };
}

const NEXT = { x: 'y', y: 'z', z: 'x' } as const;

/** Another switch, or another axis, read. */
export const rewireInput: Vary = (rig) => {
  const switches = rig.bones.flatMap((bone) => (bone.switches ?? []).map((own) => `${bone.name}.${own.name}`));
  return varyDrivers(rig, (driver) =>
    driver.inputs.flatMap((input, at) =>
      otherSources(input.from, switches).map((from): [string, Driver] => [
        `input ${at + 1} reads ${JSON.stringify(from)}`,
        { ...driver, inputs: driver.inputs.map((one, i) => (i === at ? { ...one, from } : one)) },
      ]),
    ),
  );
};

function otherSources(from: DriverSource, switches: readonly string[]): DriverSource[] {
  if ('switch' in from) return switches.filter((name) => name !== from.switch).map((name) => ({ switch: name }));
  if ('turn' in from) return [{ turn: { ...from.turn, axis: NEXT[from.turn.axis] } }];
  return 'shift' in from ? [{ shift: { ...from.shift, axis: NEXT[from.shift.axis] } }] : [];
}

/** Another axis of the bone driven. */
export const rechannelDriver: Vary = (rig) =>
  varyDrivers(rig, (driver) => {
    const { output } = driver;
    if (!('channel' in output)) return [];
    const [channel, axis] = output.channel.split('.') as ['move' | 'turn', 'x' | 'y' | 'z'];
    const other = `${channel}.${NEXT[axis]}` as const;
    return [[`drives ${other}`, { ...driver, output: { ...output, channel: other } }]];
  });

/** Another link of the same bone driven. */
export const redirectDriver: Vary = (rig) =>
  varyDrivers(rig, (driver) => {
    const { output } = driver;
    if (!('link' in output) || output.field !== 'weight') return [];
    const links = rig.bones.find(({ name }) => name === output.bone)?.links ?? [];
    return links
      .filter(({ name }) => name !== output.link)
      .map(({ name }): [string, Driver] => [`drives ${name}`, { ...driver, output: { ...output, link: name } }]);
  });
