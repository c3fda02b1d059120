import type { Driver } from '../../solver/document/rig.ts';
import { LAST_WORD, sideOf, swapSide } from '../../solver/index.ts';
import { reflectDriver } from '../../solver/mirror/reflectDriver.ts';
import { onSide, otherSide } from '../../solver/mirror/sides.ts';
import { ownerOf } from '../sentence/outputs.ts';
import { changeDrivers, type Edit } from './draft.ts';

/**
 * Mirrors a driver that writes to one side onto the other, in place of a driver of that name. A driver without a side
 * word becomes two: let_go gives let_go_left and let_go_right.
 */
export function driverAcross(name: string): Edit {
  return {
    says: `copy ${name} to the other side`,
    apply: (draft) =>
      changeDrivers(draft, (drivers) => {
        const driver = drivers.find((each) => each.name === name);
        const pair = driver && pairOf(driver);
        if (!pair) return drivers;
        const [own, copy] = pair;
        const others = drivers.filter((each) => each.name !== copy.name || each === driver);
        return others.flatMap((each) => (each === driver ? [own, copy] : [each]));
      }),
  };
}

/** The driver as it then stands, and its copy; none where it writes to no side. */
function pairOf(driver: Driver): [own: Driver, mirrored: Driver] | undefined {
  const side = sideOf(ownerOf(driver.output));
  if (side === null) return undefined;
  const copy = reflectDriver(driver, swapSide);
  if (sideOf(driver.name) !== null) return [driver, { ...copy, name: swapSide(driver.name) }];
  return [
    { ...driver, name: onSide(driver.name, side, LAST_WORD) },
    { ...copy, name: onSide(driver.name, otherSide(side), LAST_WORD) },
  ];
}
