import { useState } from 'react';
import type { Option } from '../sentence/piece.ts';
import { useBench, useSession } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';
import { Choice } from '../words/Choice.tsx';
import { Heading } from '../words/Heading.tsx';

/** Hints in steps. Each asks for a guess first: where does the learner think it lies? */
export function Hints() {
  const { exercise, dispatch } = useBench();
  const opened = useSession((session) => session.hints);
  const { rig } = useSession(draftOf);
  const [asking, setAsking] = useState(false);
  const [guess, setGuess] = useState('');
  const { hints } = exercise;
  if (hints.length === 0) return null;
  const taken = opened.length;

  function open() {
    dispatch({ do: 'hint', taken: { hint: taken, guess } });
    dispatch({ do: 'say', said: `Hint ${taken + 1}: ${hints[taken]?.says ?? ''}` });
    setAsking(false);
    setGuess('');
  }

  return (
    <section className="wb-hints">
      <Heading rank={2}>Hints</Heading>
      {opened.length > 0 && (
        <ol>
          {opened.map(({ hint, guess: was }) => (
            <li key={hint}>
              {hints[hint]?.says} <span className="wb-note">Your guess was: {guessWords(was)}.</span>
            </li>
          ))}
        </ol>
      )}
      {taken < hints.length && !asking && (
        <p>
          <button type="button" onClick={() => setAsking(true)}>
            {taken === 0 ? 'A hint' : 'Another hint'}
          </button>{' '}
          <span className="wb-note">
            {taken} of {hints.length} opened
          </span>
        </p>
      )}
      {asking && (
        <p>
          Before it: where do you think the trouble lies?{' '}
          <Choice label="your guess before the hint" value={guess} options={guesses(rig)} choose={setGuess} />{' '}
          <button type="button" disabled={guess === ''} onClick={open}>
            Open the hint
          </button>
        </p>
      )}
    </section>
  );
}

const UNSURE = 'unsure';

function guessWords(guess: string): string {
  return guess === UNSURE ? 'I cannot tell' : guess;
}

function guesses(rig: {
  bones: readonly { name: string; links?: readonly { name: string }[] }[];
  drivers?: readonly { name: string }[];
}): Option[] {
  const own = (name: string, group: string) => ({ value: name, says: name, group });
  return [
    { value: '', says: 'choose' },
    { value: UNSURE, says: 'I cannot tell' },
    { value: 'something not made yet', says: 'something not made yet' },
    ...rig.bones.flatMap((bone) => [
      own(bone.name, bone.name),
      ...(bone.links ?? []).map((link) => own(`${link.name} on ${bone.name}`, bone.name)),
    ]),
    ...(rig.drivers ?? []).map((driver) => own(`the driver ${driver.name}`, 'drivers')),
  ];
}
