import { useMemo, useState } from 'react';
import type { Vec3 } from '../../solver/document/rig.ts';
import { boneOf } from '../edit/draft.ts';
import type { Solved } from '../pose/solved.ts';
import { actualFor, expectedFor } from '../proof/expected.ts';
import { plainOptions } from '../sentence/piece.ts';
import { scopeOf } from '../sentence/scope.ts';
import { useBench } from '../state/bench.ts';
import { reachOf } from '../tryout/controls.ts';
import { Choice } from '../words/Choice.tsx';
import { CycleNote } from './CycleNote.tsx';
import { type Grip, poseGrip, restEdit, restGrip, withGrip } from './grip.ts';
import { type HandleMode, Handles } from './handles/Handles.tsx';
import { handlePlaces } from './handles/places.ts';
import { handlesHold } from './holds.ts';
import { Plate } from './Plate.tsx';
import { PoseChange } from './PoseChange.tsx';
import { PoseTable } from './PoseTable.tsx';
import { ghostDrawing } from './rigDrawing.ts';

/** The exercise's plate: the rig in its pose, handles on the chosen bone, and what should be where a proof shows it. */
export function BenchPlate({ solved }: { solved: Solved | null }) {
  const { session, exercise, dispatch } = useBench();
  const [mode, setMode] = useState<HandleMode>('move');
  const draft = session.history.document;
  const { shown } = session;
  const expected = useMemo(
    () => (shown === null ? null : expectedFor(exercise, shown, draft, session.pose)),
    [shown, exercise, draft, session.pose],
  );
  const over = useMemo(
    () =>
      expected &&
      ((pixel: number, size: number) =>
        ghostDrawing(expected.solved, expected.bones, {
          pixel,
          size,
          chosen: false,
          ghost: 'verdigris',
          says: 'expected',
        })),
    [expected],
  );
  const grip = useGrip(solved);
  const reach = useMemo(() => reachOf(draft.rig) * 2, [draft.rig]);
  const put = usePut();
  const choose = (bone: string | null) => dispatch({ do: 'choose', bone });
  const actual = shown === null ? null : actualFor(exercise, shown, draft);

  if (!solved) return <CycleNote />;
  return (
    <figure className="wb-figure">
      <Plate
        solved={solved}
        label={`${exercise.title}: the rig ${Object.keys(session.pose.bones ?? {}).length > 0 ? 'as it is posed' : 'at rest'}`}
        chosen={session.chosen ?? actual}
        choose={choose}
        fitTo={shown}
        {...(over ? { over } : {})}
        {...(grip
          ? {
              handles: {
                draw: (view) => <Handles grip={grip} mode={mode} view={view} reach={reach} put={put} />,
                places: (view) => handlePlaces(grip, view),
              },
            }
          : {})}
      />
      <p className="wb-chosen">
        Chosen:{' '}
        <Choice
          label="chosen bone"
          value={session.chosen ?? ''}
          options={chosenOptions()}
          choose={(value) => choose(value || null)}
        />
        {grip ? (
          <>
            , its handles to{' '}
            <Choice
              label="what the handles do"
              value={mode}
              options={MODES}
              choose={(value) => setMode(value as HandleMode)}
            />
            {handlesHold(session, exercise) === 'rest' ? ' at rest.' : '.'}
          </>
        ) : (
          '.'
        )}
        {expected && ' In fine dashes: where a right answer has it in this pose.'}
      </p>
      <CycleNote />
      <PoseChange solved={solved} />
      <details className="wb-poses">
        <summary>The pose in numbers</summary>
        <PoseTable solved={solved} />
      </details>
    </figure>
  );

  function chosenOptions() {
    return [{ value: '', says: 'nothing' }, ...plainOptions(draft.rig.bones.map(({ name }) => name))];
  }
}

const MODES = [
  { value: 'move', says: 'move it' },
  { value: 'turn x', says: 'turn it about x' },
  { value: 'turn y', says: 'turn it about y' },
  { value: 'turn z', says: 'turn it about z' },
];

/** In Try the handles pose a control; in Build they lay a bone that may be laid. */
function useGrip(solved: Solved | null): Grip | null {
  const { session, exercise } = useBench();
  const draft = session.history.document;
  const hold = handlesHold(session, exercise);
  return useMemo(() => {
    const bone = solved && session.chosen ? solved.rig.bones.find(({ name }) => name === session.chosen) : undefined;
    if (!bone || !solved) return null;
    if (hold === 'nothing') return null;
    if (hold === 'pose') return poseGrip(solved, session.pose, bone);
    const kept = scopeOf(draft, exercise.start, exercise.kept).keeps(bone.name, 'rest');
    return kept ? null : restGrip(solved, bone);
  }, [solved, session.chosen, hold, session.pose, draft, exercise]);
}

function usePut(): (channel: 'move' | 'turn', values: Vec3) => void {
  const { session, exercise, dispatch, edit } = useBench();
  return (channel, values) => {
    const bone = session.chosen ? boneOf(session.history.document, session.chosen) : undefined;
    if (!bone) return;
    if (handlesHold(session, exercise) === 'pose')
      dispatch({ do: 'pose', pose: withGrip(session.pose, bone, channel, values) });
    else edit(restEdit(bone.name, channel, values), `rest ${bone.name}`);
  };
}
