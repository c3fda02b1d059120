import { useMemo, useRef, useState } from 'react';
import { answeredBy } from '../answer/kinds.ts';
import { useBench, useSession } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';
import { useSolvedNow } from '../state/solvedNow.ts';
import { reachOf } from '../tryout/controls.ts';
import { ChosenLine } from './ChosenLine.tsx';
import { CycleNote } from './CycleNote.tsx';
import { type HandleMode, Handles } from './handles/Handles.tsx';
import { handlePlaces } from './handles/places.ts';
import { Plate } from './Plate.tsx';
import { PoseChange } from './PoseChange.tsx';
import { PoseNumbers } from './PoseNumbers.tsx';
import { useExpected } from './useExpected.ts';
import { useGrip, usePut } from './useGrip.ts';
import { useInSight } from './useInSight.ts';

/** The exercise's plate: the rig in its pose, handles on the chosen bone, and what should be where a proof shows it. */
export function BenchPlate() {
  const { exercise, dispatch } = useBench();
  const solved = useSolvedNow();
  const [mode, setMode] = useState<HandleMode>('move');
  const { rig } = useSession(draftOf);
  const chosen = useSession((session) => session.chosen);
  const isMoved = useSession(({ view }) => view === 'try' || answeredBy(exercise) === 'pose');
  const isPosed = useSession(({ pose }) => Object.keys(pose.bones ?? {}).length > 0);
  const { shown, actual, over } = useExpected();
  const figure = useRef<HTMLElement>(null);
  useInSight(figure, shown);
  const grip = useGrip(solved);
  const put = usePut();
  const reach = useMemo(() => reachOf(rig) * 2, [rig]);

  if (!solved) return <CycleNote />;
  const handles = grip && {
    of: grip.bone,
    draw: (view: Parameters<typeof handlePlaces>[1]) => (
      <Handles grip={grip} mode={mode} view={view} reach={reach} put={put} />
    ),
    places: (view: Parameters<typeof handlePlaces>[1]) => handlePlaces(grip, view),
  };
  return (
    <figure ref={figure} className={isMoved || shown !== null ? 'wb-figure stays shows' : 'wb-figure stays'}>
      <Plate
        solved={solved}
        label={`${exercise.title}: the rig ${isPosed ? 'as it is posed' : 'at rest'}`}
        chosen={chosen ?? actual}
        choose={(bone) => dispatch({ do: 'choose', bone })}
        fitTo={shown}
        over={over}
        handles={handles}
      />
      <ChosenLine mode={grip && mode} setMode={setMode} />
      {over && <p className="wb-note">In fine dashes: where a right answer has it in this pose.</p>}
      <CycleNote />
      <PoseChange solved={solved} />
      <PoseNumbers solved={solved} />
    </figure>
  );
}
