import { useBench } from '../state/bench.ts';
import { TextWord } from '../words/TextWord.tsx';
import { type KeptVersion, NAME_MAX, proofWords } from './version.ts';

interface Props {
  version: KeptVersion;
  open: () => void;
  rename: (name: string) => void;
  takeAway: () => void;
}

/** One kept version: its name, when it was kept, what a proof said of it. */
export function VersionLine({ version, open, rename, takeAway }: Props) {
  const { exercise } = useBench();
  const { name, when, proof, edition } = version;
  return (
    <li>
      <TextWord
        label={`name of the version ${name}`}
        value={name}
        put={(next) => next !== '' && rename(next.slice(0, NAME_MAX))}
      />
      <span>{new Date(when).toLocaleString()}</span>
      <span>
        {proofWords(proof)}
        {edition !== exercise.edition && ', of an earlier edition of this exercise'}
      </span>
      <button type="button" onClick={open}>
        Open<span className="unseen"> the version {name}</span>
      </button>
      <button type="button" className="wb-aside" aria-label={`Take away the version ${name}`} onClick={takeAway}>
        take away
      </button>
    </li>
  );
}
