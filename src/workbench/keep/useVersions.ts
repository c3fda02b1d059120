import { useEffect, useMemo, useSyncExternalStore } from 'react';
import { useBench, useSession } from '../state/bench.ts';
import { contentOf, isSameContent, proofNow } from './version.ts';
import { createVersionList, type VersionList, type VersionsNow } from './versionList.ts';
import { noteProof } from './versions.ts';

const NOTHING_YET: VersionsNow = { versions: undefined, off: null };

/** The kept versions of the work. A proof of what one of them holds is written down with it. */
export function useVersions(work: string): { list: VersionList } & VersionsNow {
  const { store, exercise } = useBench();
  const list = useMemo(() => createVersionList(work), [work]);
  const now = useSyncExternalStore(list.subscribe, list.get, () => NOTHING_YET);
  const proofs = useSession((session) => session.proofs);
  // biome-ignore lint/correctness/useExhaustiveDependencies: looked into whenever a proof has been made
  useEffect(() => {
    const session = store.get();
    const proof = proofNow(session, exercise);
    const content = contentOf(session, exercise);
    const isOld = list.get().versions?.some((each) => isSameContent(each, content) && each.proof?.mark !== proof?.mark);
    if (proof && isOld) void list.make(() => noteProof(work, content, proof));
  }, [proofs, list, store, exercise, work]);
  return { list, ...now };
}
