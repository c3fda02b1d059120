import { sideOf, swapSide } from '../../solver/index.ts';
import { boneOf } from '../edit/draft.ts';
import { driverAcross } from '../edit/driverAcross.ts';
import { linkAcross } from '../edit/linkAcross.ts';
import { ownerOf } from '../sentence/outputs.ts';
import { useBench, useSession } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';

/** Copies a link to the bone of the other side; nothing where there is no such bone. */
export function LinkAcross({ slot, bone, link }: { slot: string; bone: string; link: string }) {
  const { edit } = useBench();
  const draft = useSession(draftOf);
  const other = swapSide(bone);
  if (other === bone || !boneOf(draft, other)) return null;
  return (
    <button
      type="button"
      className="wb-aside"
      aria-label={`copy to ${other}: ${link} on ${bone}`}
      onClick={() => edit(linkAcross(bone, link), slot)}
    >
      copy to {other}
    </button>
  );
}

/** Copies a driver that writes to one side to the other. */
export function DriverAcross({ slot, driver }: { slot: string; driver: string }) {
  const { edit } = useBench();
  const { rig } = useSession(draftOf);
  const output = rig.drivers?.find((each) => each.name === driver)?.output;
  const side = output && sideOf(ownerOf(output));
  if (!side) return null;
  const other = side === 'left' ? 'right' : 'left';
  return (
    <button
      type="button"
      className="wb-aside"
      aria-label={`copy to the ${other}: ${driver}`}
      onClick={() => edit(driverAcross(driver), slot)}
    >
      copy to the {other}
    </button>
  );
}
