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
