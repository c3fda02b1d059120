import { plainOptions } from '../sentence/piece.ts';
import { useBench, useSession } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';
import { Choice } from '../words/Choice.tsx';
import type { HandleMode } from './handles/Handles.tsx';
import { handlesHold } from './holds.ts';

const MODES: readonly { value: HandleMode; says: string }[] = [
  { value: 'move', says: 'move it' },
  { value: 'turn x', says: 'turn it about x' },
  { value: 'turn y', says: 'turn it about y' },
  { value: 'turn z', says: 'turn it about z' },
];

interface Props {
  /** What the handles do; null where the chosen bone has none. */
  mode: HandleMode | null;
  setMode: (mode: HandleMode) => void;
}

/** "Chosen: wind_left, its handles to move it." */
export function ChosenLine({ mode, setMode }: Props) {
  const { exercise, dispatch } = useBench();
  const { rig } = useSession(draftOf);
  const chosen = useSession((session) => session.chosen);
  const atRest = useSession((session) => handlesHold(session, exercise) === 'rest');
  const bones = [{ value: '', says: 'nothing' }, ...plainOptions(rig.bones.map(({ name }) => name))];
  return (
    <p className="wb-chosen">
      Chosen:{' '}
      <Choice
        label="chosen bone"
        value={chosen ?? ''}
        options={bones}
        choose={(bone) => dispatch({ do: 'choose', bone: bone || null })}
      />
      {mode && (
        <>
          , its handles to{' '}
          <Choice
            label="what the handles do"
            value={mode}
            options={MODES}
            choose={(value) => setMode(value as HandleMode)}
          />
          {atRest && ' at rest'}
        </>
      )}
      {!mode && chosen !== null && atRest && ', which stays where it is given'}.
      {chosen === null && <span className="wb-note"> Choose a bone here or on the plate.</span>}
    </p>
  );
}
