import { useEffect, useState } from 'react';

/** Gives a way to move the focus to the first field of a place on the page, once it has been drawn. */
export function useFocusGoal(idOf: (slot: string) => string): (slot: string) => void {
  const [goal, setGoal] = useState<string | null>(null);
  useEffect(() => {
    if (goal === null) return;
    setGoal(null);
    const place = document.getElementById(idOf(goal));
    place?.scrollIntoView({ block: 'nearest' });
    place?.querySelector<HTMLElement>('select, input, button')?.focus();
  }, [goal, idOf]);
  return setGoal;
}
