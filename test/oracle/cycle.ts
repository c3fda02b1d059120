/** Whether a rig waits for itself somewhere. */
import type { Rig } from '../../src/solver/document/rig.ts';
import { dependencies } from './dependencies.ts';

/** Takes away, again and again, whatever waits for nothing that is left; what cannot be taken away is on or behind a cycle. */
export function oracleCycle(rig: Rig): boolean {
  const left = new Map(dependencies(rig));
  for (;;) {
    const free = [...left].filter(([, needs]) => needs.every((need) => !left.has(need))).map(([thing]) => thing);
    if (free.length === 0) return left.size > 0;
    for (const thing of free) left.delete(thing);
  }
}
