import { useEffect, useMemo, useRef, useState } from 'react';
import type { Vec3 } from '../../solver/document/rig.ts';
import type { Solved } from '../pose/solved.ts';
import { endsOf, extentOf } from './extent.ts';
import type { Extent } from './view.ts';

/** Fitted to the rig at rest, so that the plate does not move when the rig does; to a pose too where that is asked. */
export function useExtent(solved: Solved, fitTo: string | null): { extent: Extent; refit: () => void } {
  const { mesh, bones } = solved.rig;
  // biome-ignore lint/correctness/useExhaustiveDependencies: only what the extent is made of
  const rest = useMemo(() => extentOf(solved.rig), [mesh, bones]);
  const [also, setAlso] = useState<readonly Vec3[]>([]);
  const latest = useRef(solved);
  latest.current = solved;
  useEffect(() => {
    if (fitTo !== null) setAlso(endsOf(latest.current));
  }, [fitTo]);
  const extent = useMemo(() => ({ ...rest, points: [...rest.points, ...also] }), [rest, also]);
  return { extent, refit: () => setAlso(endsOf(solved)) };
}
