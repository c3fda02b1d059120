import { useEffect, useRef, useState } from 'react';
import type { Solved } from '../pose/solved.ts';
import { type PoseRow, poseRows } from './PoseTable.tsx';

const QUIET_MS = 700;
const MOST_TOLD = 4;

/** Tells, once a pose has come to rest, which bones now stand otherwise than before. */
export function PoseChange({ solved }: { solved: Solved }) {
  const told = useRef(solved);
  const [words, setWords] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => {
      const before = told.current;
      told.current = solved;
      setWords(changeWords(poseRows(before), poseRows(solved)));
    }, QUIET_MS);
    return () => clearTimeout(timer);
  }, [solved]);
  return (
    <p className="unseen" aria-live="polite">
      {words}
    </p>
  );
}

/** "vane_left: base 0.1, 1.5, 0, turn 0, 12, 0, length 0.3." */
export function changeWords(before: readonly PoseRow[], after: readonly PoseRow[]): string {
  const old = new Map(before.map(({ name, numbers }) => [name, numbers.join(' ')]));
  const changed = after.filter(({ name, numbers }) => old.has(name) && old.get(name) !== numbers.join(' '));
  const told = changed.slice(0, MOST_TOLD).map(({ name, numbers: n }) => {
    return `${name}: base ${n.slice(0, 3).join(', ')}, turn ${n.slice(3, 6).join(', ')}, length ${n[6]}.`;
  });
  const more = changed.length - told.length;
  return [...told, ...(more > 0 ? [`${more} more moved.`] : [])].join(' ');
}
