import { useCallback, useEffect, useState } from 'react';
import { type Handing, newHanding } from './handing.ts';
import { changeHanding, keptHanding } from './handing-store.ts';

interface Held {
  /** Null until it is back. */
  handing: Handing | null;
  change: (change: (handing: Handing) => Handing) => void;
  /** The browser keeps nothing: what is done lasts until the page is left. */
  isForbidden: boolean;
}

/** What a learner has done of an assignment: brought back, and kept with every change. */
export function useHanding(assignment: string, learner: string): Held {
  const [handing, setHanding] = useState<Handing | null>(null);
  const [isForbidden, setForbidden] = useState(false);

  useEffect(() => {
    let isOver = false;
    setHanding(null);
    keptHanding(assignment, learner)
      .catch(() => {
        if (!isOver) setForbidden(true);
        return newHanding(assignment, learner);
      })
      .then((kept) => !isOver && setHanding(kept));
    return () => {
      isOver = true;
    };
  }, [assignment, learner]);

  const change = useCallback(
    (make: (handing: Handing) => Handing) => {
      if (isForbidden) return setHanding((held) => held && make(held));
      changeHanding(assignment, learner, make).then(setHanding, () => {
        setForbidden(true);
        setHanding((held) => held && make(held));
      });
    },
    [assignment, learner, isForbidden],
  );
  return { handing, change, isForbidden };
}
