import type { Rest, Rig } from '../../solver/document/rig.ts';
import { addBone } from '../edit/addBone.ts';
import { freshName } from '../edit/draft.ts';
import { useBench } from '../state/bench.ts';

/** Adds a bone that stands where the chosen bone stands, or at the first bone's base. */
export function AddBone() {
  const { store, edit, goTo, dispatch } = useBench();
  function add() {
    const { chosen, history } = store.get();
    const { rig } = history.document;
    const name = freshName(
      'bone',
      rig.bones.map((bone) => bone.name),
    );
    edit(addBone(newRest(rig, chosen)), 'new bone');
    dispatch({ do: 'choose', bone: name });
    goTo(`bone ${name}`);
  }
  return (
    <button type="button" onClick={add}>
      Add a bone
    </button>
  );
}

/** Upright ways of lying are the learner's to choose: a new bone points forward, as long as its neighbour. */
function newRest(rig: Rig, chosen: string | null): Rest {
  const near = rig.bones.find((bone) => bone.name === chosen) ?? rig.bones[0];
  return { base: near?.rest.base ?? [0, 0, 0], turn: [0, 0, 0, 1], length: near?.rest.length ?? 0.1 };
}
