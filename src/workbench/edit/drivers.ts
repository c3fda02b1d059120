import type { Driver, DriverInput, DriverOutput, DriverSource } from '../../solver/document/rig.ts';
import { apart, changeDrivers, type Edit, freshName, movedBy, withField } from './draft.ts';

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

export function changeDriver(name: string, what: string, change: (driver: Driver) => Driver): Edit {
  return {
    says: `change the ${what} of ${name}`,
    merge: `${what} of driver ${name}`,
    apply: (draft) =>
      changeDrivers(draft, (drivers) => drivers.map((driver) => (driver.name === name ? change(driver) : driver))),
  };
}

export function renameDriver(from: string, to: string): Edit {
  return apart(
    `rename ${from} to ${to}`,
    changeDriver(from, 'name', (driver) => ({ ...driver, name: to })),
  );
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
  return changeDriver(name, `input ${index + 1}`, (driver) => ({
    ...driver,
    inputs: driver.inputs.with(index, written),
  }));
}

export function addInput(name: string, from: DriverSource): Edit {
  return apart(
    `add an input to ${name}`,
    changeDriver(name, 'inputs', (driver) => ({ ...driver, inputs: [...driver.inputs, { from }] })),
  );
}

/** Takes one input away; the last one stays, for a driver without input cannot be read. */
export function removeInput(name: string, index: number): Edit {
  return apart(
    `take an input off ${name}`,
    changeDriver(name, 'inputs', (driver) => {
      if (driver.inputs.length < 2) return driver;
      return { ...driver, inputs: driver.inputs.toSpliced(index, 1) };
    }),
  );
}

export function setOutput(name: string, output: DriverOutput): Edit {
  return changeDriver(name, 'output', (driver) => ({ ...driver, output }));
}
