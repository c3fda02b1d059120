import type { Driver, Switch } from '../../solver/document/rig.ts';
import { changeBone, changeDrivers, type Draft, type Edit, freshName, movedBy, withList } from './draft.ts';

/** Adds a sliding switch, 0 to 1, off at first. */
export function addSwitch(bone: string, wanted = 'switch'): Edit {
  return {
    says: `add a switch to ${bone}`,
    apply: (draft) =>
      changeSwitches(draft, bone, (switches) => {
        const taken = switches.map((each) => each.name);
        return [...switches, { name: freshName(wanted, taken), min: 0, max: 1, default: 0, sliding: true }];
      }),
  };
}

export function changeSwitch(bone: string, name: string, what: string, change: Partial<Switch>): Edit {
  return {
    says: `change the ${what} of ${bone}.${name}`,
    merge: `${what} of ${bone}.${name}`,
    apply: (draft) =>
      changeSwitches(draft, bone, (switches) =>
        switches.map((each) => (each.name === name ? { ...each, ...change } : each)),
      ),
  };
}

/** Renames a switch, in the drivers that read or write it and in the parts bound to it. */
export function renameSwitch(bone: string, from: string, to: string): Edit {
  const was = `${bone}.${from}`;
  const is = `${bone}.${to}`;
  return {
    says: `rename ${was} to ${to}`,
    apply: (draft) => {
      const renamed = changeSwitches(draft, bone, (switches) =>
        switches.map((each) => (each.name === from ? { ...each, name: to } : each)),
      );
      const driven = changeDrivers(renamed, (drivers) => drivers.map((driver) => switchRenamed(driver, was, is)));
      const parts = Object.entries(draft.parts).map(([part, bound]) => [part, bound === was ? is : bound]);
      return { ...driven, parts: Object.fromEntries(parts) };
    },
  };
}

/** Takes a switch away, with every input that reads it, and the drivers left without input or output. */
export function removeSwitch(bone: string, name: string): Edit {
  const reference = `${bone}.${name}`;
  return {
    says: `take the switch ${reference} away`,
    apply: (draft) => {
      const without = changeSwitches(draft, bone, (switches) => switches.filter((each) => each.name !== name));
      const driven = changeDrivers(without, (drivers) =>
        drivers
          .filter(({ output }) => !('switch' in output && output.switch === reference))
          .map((driver) => withoutInput(driver, reference))
          .filter((driver) => driver.inputs.length > 0),
      );
      const parts = Object.entries(draft.parts).filter(([, bound]) => bound !== reference);
      return { ...driven, parts: Object.fromEntries(parts) };
    },
  };
}

export function reorderSwitch(bone: string, name: string, places: number): Edit {
  return {
    says: `move ${bone}.${name} ${places < 0 ? 'up' : 'down'}`,
    apply: (draft) =>
      changeSwitches(draft, bone, (switches) => {
        const index = switches.findIndex((each) => each.name === name);
        return movedBy(switches, index, places);
      }),
  };
}

function changeSwitches(draft: Draft, bone: string, change: (old: readonly Switch[]) => readonly Switch[]): Draft {
  return changeBone(draft, bone, (old) => withList(old, 'switches', change(old.switches ?? [])));
}

function withoutInput(driver: Driver, reference: string): Driver {
  const inputs = driver.inputs.filter(({ from }) => !('switch' in from && from.switch === reference));
  return { ...driver, inputs };
}

function switchRenamed(driver: Driver, was: string, is: string): Driver {
  const inputs = driver.inputs.map((input) =>
    'switch' in input.from && input.from.switch === was ? { ...input, from: { switch: is } } : input,
  );
  const { output } = driver;
  return { ...driver, inputs, output: 'switch' in output && output.switch === was ? { switch: is } : output };
}
