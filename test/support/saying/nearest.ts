import type { Exercise } from '../../../src/grader/index.ts';
import type { Rig } from '../../../src/solver/index.ts';
import type { Draft } from '../../../src/workbench/edit/draft.ts';
import { after, type Deed, deeds } from './deeds.ts';
import { difference, differing, flat } from './flat.ts';

export interface Next {
  readonly deed: Deed;
  readonly draft: Draft;
}

/** The deed that brings a draft nearest to a rig; null where it is there. Throws where none brings it nearer. */
export function nextDeed(draft: Draft, wanted: Rig, exercise: Exercise): Next | null {
  const goal = flat(wanted);
  let least = difference(flat(draft.rig), goal);
  if (least === 0) return null;
  let best: Next | null = null;
  for (const deed of deeds(draft, wanted, exercise)) {
    const then = after(draft, deed);
    if (!then) continue;
    const left = difference(flat(then.rig), goal);
    if (left < least) [least, best] = [left, { deed, draft: then }];
  }
  if (best) return best;
  throw new Error(`nothing on the page brings it nearer:\n${differing(flat(draft.rig), goal).join('\n')}`);
}
