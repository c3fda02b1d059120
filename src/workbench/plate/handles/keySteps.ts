import type { KeyboardEvent } from 'react';

/** How many steps a key means, as on any slider; Home and End go to the ends. Null for keys that mean nothing here. */
export function keySteps(event: KeyboardEvent): number | 'least' | 'most' | null {
  if (event.altKey || event.ctrlKey || event.metaKey) return null;
  return STEPS[event.key] ?? null;
}

const STEPS: Readonly<Record<string, number | 'least' | 'most'>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
  Home: 'least',
  End: 'most',
};
