import type { Setting } from '../setting.ts';
import { type Parts, takenApart, type World } from '../world.ts';

/** Takes a transform apart for a link, with the flags that this raises on it. */
export function takeApart(setting: Setting, world: World): Parts {
  const { parts, flat, shear } = takenApart(world);
  if (flat) setting.raise('flat');
  if (shear) setting.raise('shear');
  return parts;
}
