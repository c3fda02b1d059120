import { useState } from 'react';
import type { Solved } from '../pose/solved.ts';
import { PoseTable } from './PoseTable.tsx';

/** The pose table, made only while it is open. */
export function PoseNumbers({ solved }: { solved: Solved }) {
  const [open, setOpen] = useState(false);
  return (
    <details className="wb-poses" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>The pose in numbers</summary>
      {open && <PoseTable solved={solved} />}
    </details>
  );
}
