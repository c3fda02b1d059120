import { copyBone, copyName, copyWords } from '../edit/copyBone.ts';
import { useBench } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';

export interface Copied {
  readonly name: string;
  readonly words: string;
}

interface Props {
  bone: string;
  /** Told the copy's name, and what it has of its original. */
  tell: (copy: Copied) => void;
}

/** Makes a copy of a bone, chooses it and goes to its name. */
export function CopyBone({ bone, tell }: Props) {
  const { store, edit, dispatch, goTo } = useBench();
  function copy() {
    const draft = draftOf(store.get());
    const [name, words] = [copyName(draft, bone), copyWords(draft, bone)];
    edit(copyBone(bone), `bone ${bone}`);
    if (draftOf(store.get()) === draft) return;
    dispatch({ do: 'choose', bone: name });
    dispatch({ do: 'say', said: words });
    tell({ name, words });
    goTo(`bone ${name}`);
  }
  return (
    <button type="button" onClick={copy}>
      Make a copy<span className="unseen"> of {bone}</span>
    </button>
  );
}
