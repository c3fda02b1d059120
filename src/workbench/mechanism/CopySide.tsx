import { type Side, sideOf } from '../../solver/index.ts';
import { copySide } from '../edit/copySide.ts';
import { useBench, useSession } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';
import { RefusalAt } from '../words/RefusalAt.tsx';

/** Copies a whole side across, where the rig has sides. */
export function CopySide() {
  const { edit } = useBench();
  const { rig } = useSession(draftOf);
  const sides = new Set(rig.bones.map((bone) => sideOf(bone.name)));
  const slot = 'copy side';
  const offer = (from: Side, to: Side) =>
    sides.has(from) && (
      <button type="button" onClick={() => edit(copySide(from), slot)}>
        Copy the {from} side to the {to}
      </button>
    );
  return (
    <>
      {offer('left', 'right')}
      {offer('right', 'left')}
      <RefusalAt slot={slot} />
    </>
  );
}
