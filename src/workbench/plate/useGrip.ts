import { useMemo } from 'react';
import type { Vec3 } from '../../solver/document/rig.ts';
import { boneOf } from '../edit/draft.ts';
import type { Solved } from '../pose/solved.ts';
import { scopeOf } from '../sentence/scope.ts';
import { useBench, useSession } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';
import { type Grip, poseGrip, restEdit, restGrip, withGrip } from './grip.ts';
import { handlesHold } from './holds.ts';

/** The handles of the chosen bone: in Try they pose a control, in Build they lay a bone that may be laid. */
export function useGrip(solved: Solved | null): Grip | null {
  const { exercise } = useBench();
  const draft = useSession(draftOf);
  const chosen = useSession((session) => session.chosen);
  const pose = useSession((session) => session.pose);
  const hold = useSession((session) => handlesHold(session, exercise));
  return useMemo(() => {
    const bone = solved?.rig.bones.find(({ name }) => name === chosen);
    if (!bone || !solved || hold === 'nothing') return null;
    if (hold === 'pose') return poseGrip(solved, pose, bone);
    const kept = scopeOf(draft, exercise.start, exercise.kept).keeps(bone.name, 'rest');
    return kept ? null : restGrip(solved, bone);
  }, [solved, chosen, hold, pose, draft, exercise]);
}

/** What moving a handle does. */
export function usePut(): (channel: 'move' | 'turn', values: Vec3) => void {
  const { store, exercise, dispatch, edit } = useBench();
  return (channel, values) => {
    const session = store.get();
    const bone = session.chosen ? boneOf(draftOf(session), session.chosen) : undefined;
    if (!bone) return;
    if (handlesHold(session, exercise) === 'rest') edit(restEdit(bone.name, channel, values), `rest ${bone.name}`);
    else dispatch({ do: 'pose', pose: withGrip(session.pose, bone, channel, values) });
  };
}
