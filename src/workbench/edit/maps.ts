import type { DriverMap, MapShape } from '../../solver/document/rig.ts';
import { apart, type Edit, withField } from './draft.ts';
import { changeDriver } from './drivers.ts';

/** Between keys; a bezier begins as the straight line. */
export function setShape(name: string, shape: 'straight' | 'eased' | 'stepped' | 'bezier'): Edit {
  const written: MapShape | undefined = shape === 'bezier' ? { bezier: [0.25, 0.25, 0.75, 0.75] } : shape;
  return setMap(name, 'shape', (map) => withField(map, 'shape', shape === 'straight' ? undefined : written));
}

export function setBezier(name: string, bezier: readonly [number, number, number, number]): Edit {
  return setMap(name, 'curve', (map) => ({ ...map, shape: { bezier } }));
}

export function setBeyond(name: string, beyond: 'hold' | 'extend'): Edit {
  return setMap(name, 'ends', (map) => withField(map, 'beyond', beyond === 'hold' ? undefined : beyond));
}

/** The key with another place or value. */
export function setKey(name: string, index: number, key: readonly [number, number]): Edit {
  return setMap(name, `key ${index + 1}`, (map) => ({ ...map, keys: map.keys.with(index, key) }));
}

/** Adds a key half-way along the widest stretch, on the straight line, so that a straight map stays as it is. */
export function addKey(name: string): Edit {
  return apart(
    `add a key to the map of ${name}`,
    setMap(name, 'keys', (map) => {
      let widest = 0;
      for (let i = 1; i + 1 < map.keys.length; i++) {
        if (width(map, i) > width(map, widest)) widest = i;
      }
      const [ax, ay] = map.keys[widest]!;
      const [bx, by] = map.keys[widest + 1]!;
      return { ...map, keys: map.keys.toSpliced(widest + 1, 0, [(ax + bx) / 2, (ay + by) / 2]) };
    }),
  );
}

/** Takes a key away; two stay, for a map of fewer cannot be read. */
export function removeKey(name: string, index: number): Edit {
  return apart(
    `take a key off the map of ${name}`,
    setMap(name, 'keys', (map) => (map.keys.length < 3 ? map : { ...map, keys: map.keys.toSpliced(index, 1) })),
  );
}

/** Turns the map upside down: what it gave at one end it gives at the other. */
export function invertMap(name: string): Edit {
  return apart(
    `invert the map of ${name}`,
    setMap(name, 'keys', (map) => {
      const values = map.keys.map(([, y]) => y);
      const sum = Math.min(...values) + Math.max(...values);
      return { ...map, keys: map.keys.map(([x, y]) => [x, sum - y] as const) };
    }),
  );
}

function setMap(name: string, what: string, change: (map: DriverMap) => DriverMap): Edit {
  return changeDriver(name, `map's ${what}`, (driver) => ({ ...driver, map: change(driver.map) }));
}

function width(map: DriverMap, index: number): number {
  return map.keys[index + 1]![0] - map.keys[index]![0];
}
