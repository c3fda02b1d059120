import { useMemo } from 'react';
import { Playback } from '../play/Playback.tsx';
import { useBench, useSession } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';
import { Heading } from '../words/Heading.tsx';
import { ControlRows } from './ControlRows.tsx';
import { controlsOf } from './controls.ts';
import { Flags } from './Flags.tsx';
import { SwitchSlider } from './SwitchSlider.tsx';

/** Try: the controls and switches as an animator has them. */
export function TryOut() {
  const { exercise, dispatch } = useBench();
  const draft = useSession(draftOf);
  const { bones, switches } = useMemo(() => controlsOf(draft, exercise), [draft, exercise]);
  return (
    <section className="wb-tryout" aria-label={`Try-out of ${exercise.title}`}>
      <Heading rank={1}>Try-out</Heading>
      <p className="wb-adds">
        <button type="button" onClick={() => dispatch({ do: 'rest' })}>
          Back to rest
        </button>
      </p>
      {switches.map((own) => (
        <SwitchSlider key={own.name} own={own} />
      ))}
      {bones.map((control) => (
        <ControlRows key={control.bone.name} control={control} />
      ))}
      {bones.length === 0 && switches.length === 0 && (
        <p className="wb-none">Nothing here can be moved yet: the rig has no control and no switch.</p>
      )}
      <Flags />
      {bones.length + switches.length > 0 && <Playback />}
    </section>
  );
}
