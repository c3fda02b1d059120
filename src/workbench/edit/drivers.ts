import type { Driver, DriverInput, DriverMap, DriverOutput, DriverSource } from '../../solver/document/rig.ts';
import { changeDrivers, type Edit, freshName, movedBy, withField } from './draft.ts';

/** Adds a driver from one source to one output, through a straight map 0 → 0, 1 → 1. */
export function addDriver(from: DriverSource, output: DriverOutput, wanted = 'driver'): Edit {
  return {
    says: 'add a driver',
    apply: (draft) =>
      changeDrivers(draft, (drivers) => {
        const taken = drivers.map((driver) => driver.name);
        const keys = [
          [0, 0],
          [1, 1],
        ] as const;
        return [...drivers, { name: freshName(wanted, taken), inputs: [{ from }], map: { keys }, output }];
      }),
  };
}

export function changeDriver(name: string, what: string, change: (driver: Driver) => Driver, merge?: string): Edit {
  return {
    says: `change the ${what} of ${name}`,
    ...(merge ? { merge: `${merge} of driver ${name}` } : {}),
    apply: (draft) =>
      changeDrivers(draft, (drivers) => drivers.map((driver) => (driver.name === name ? change(driver) : driver))),
  };
}

export function renameDriver(from: string, to: string): Edit {
  return { ...changeDriver(from, 'name', (driver) => ({ ...driver, name: to })), says: `rename ${from} to ${to}` };
}

export function removeDriver(name: string): Edit {
  return {
    says: `take ${name} away`,
    apply: (draft) => changeDrivers(draft, (drivers) => drivers.filter((driver) => driver.name !== name)),
  };
}

export function reorderDriver(name: string, places: number): Edit {
  return {
    says: `move ${name} ${places < 0 ? 'up' : 'down'}`,
    apply: (draft) =>
      changeDrivers(draft, (drivers) => {
        const index = drivers.findIndex((driver) => driver.name === name);
        return movedBy(drivers, index, places);
      }),
  };
}

/** Changes one input of a driver; `times` of 1 is not written. */
export function setInput(name: string, index: number, input: DriverInput): Edit {
  const written = withField(input, 'times', input.times === 1 ? undefined : input.times);
  return changeDriver(
    name,
    'input',
    (driver) => ({ ...driver, inputs: driver.inputs.with(index, written) }),
    `input ${index}`,
  );
}

export function addInput(name: string, from: DriverSource): Edit {
  return changeDriver(name, 'inputs', (driver) => ({ ...driver, inputs: [...driver.inputs, { from }] }));
}

/** Takes one input away; the last one stays, for a driver without input cannot be read. */
export function removeInput(name: string, index: number): Edit {
  return changeDriver(name, 'inputs', (driver) => {
    if (driver.inputs.length < 2) return driver;
    return { ...driver, inputs: driver.inputs.toSpliced(index, 1) };
  });
}

export function setMap(name: string, change: (map: DriverMap) => DriverMap, merge?: string): Edit {
  return changeDriver(name, 'map', (driver) => ({ ...driver, map: change(driver.map) }), merge);
}

/** The key with another place or value; keys stand in the order of x. */
export function setKey(name: string, index: number, key: readonly [number, number]): Edit {
  return setMap(name, (map) => ({ ...map, keys: map.keys.with(index, key) }), `key ${index}`);
}

/** Adds a key half-way along the widest stretch, on the straight line, so that a straight map stays as it is. */
export function addKey(name: string): Edit {
  return setMap(name, (map) => {
    let widest = 0;
    for (let i = 1; i + 1 < map.keys.length; i++) {
      if (width(map, i) > width(map, widest)) widest = i;
    }
    const [ax, ay] = map.keys[widest]!;
    const [bx, by] = map.keys[widest + 1]!;
    return { ...map, keys: map.keys.toSpliced(widest + 1, 0, [(ax + bx) / 2, (ay + by) / 2]) };
  });
}

export function removeKey(name: string, index: number): Edit {
  return setMap(name, (map) => (map.keys.length < 3 ? map : { ...map, keys: map.keys.toSpliced(index, 1) }));
}

/** Turns the map upside down: what it gave at one end it gives at the other. */
export function invertMap(name: string): Edit {
  return setMap(name, (map) => {
    const values = map.keys.map(([, y]) => y);
    const sum = Math.min(...values) + Math.max(...values);
    return { ...map, keys: map.keys.map(([x, y]) => [x, sum - y] as const) };
  });
}

function width(map: DriverMap, index: number): number {
  return map.keys[index + 1]![0] - map.keys[index]![0];
}
