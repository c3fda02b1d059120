import { type Side, sideOf } from '../../solver/index.ts';
import { copySide } from '../edit/copySide.ts';
import { useBench } from '../state/bench.ts';
import { RefusalAt } from '../words/RefusalAt.tsx';

/** Copies a whole side across, where the rig has sides. */
export function CopySide() {
  const { session, edit } = useBench();
  const sides = new Set(session.history.document.rig.bones.map((bone) => sideOf(bone.name)));
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
