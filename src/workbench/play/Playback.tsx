import { useMemo, useState } from 'react';
import type { Pose } from '../../solver/document/rig.ts';
import { useBench, useSession } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';
import { Heading } from '../words/Heading.tsx';
import { PlayLine } from './PlayLine.tsx';

const SPEEDS = [0.25, 0.5, 1, 2, 4];
/** Seconds a probe stands, and seconds from one key to the next, at ordinary speed. */
const PROBE_SECONDS = 0.5;
const KEY_SECONDS = 1.5;
const MOST_KEYS = 8;

/** The proof's probes one after the other, and a motion through poses that were kept as keys. */
export function Playback() {
  const [speed, setSpeed] = useState(1);
  return (
    <details className="wb-playback">
      <summary>Play</summary>
      <p>
        <label>
          Speed{' '}
          <select value={speed} onChange={({ target }) => setSpeed(Number(target.value))}>
            {SPEEDS.map((each) => (
              <option key={each} value={each}>
                {each === 1 ? 'ordinary' : `${each} times`}
              </option>
            ))}
          </select>
        </label>
      </p>
      <Probes speed={speed} />
      <Motion speed={speed} />
    </details>
  );
}

/** The ladder of probes as it stands for the rig that is built now. */
function Probes({ speed }: { speed: number }) {
  const { exercise, desk } = useBench();
  const { rig, parts } = useSession(draftOf);
  const [poses, setPoses] = useState<readonly Pose[] | null>(null);
  const strip = useMemo(() => poses && { poses, seconds: PROBE_SECONDS, moves: false }, [poses]);
  const fetchPoses = async () => setPoses(await desk.ask({ ask: 'probes', exercise, rig, parts }));
  return (
    <>
      <Heading rank={2}>The proof’s probes</Heading>
      <p className="wb-note">The poses in which every proof tries the rig first, before it goes looking for worse.</p>
      <p>
        <button type="button" onClick={() => void fetchPoses()}>
          {poses ? 'Fetch them again for the rig as it is now' : 'Fetch them'}
        </button>
      </p>
      {strip && strip.poses.length > 1 && (
        <PlayLine key={strip.poses.length} name="Probes" strip={strip} speed={speed} />
      )}
      {strip?.poses.length === 1 && (
        <p className="wb-note">Nothing can be moved yet, so there is only the rest pose.</p>
      )}
    </>
  );
}

function Motion({ speed }: { speed: number }) {
  const { store, dispatch } = useBench();
  const [keys, setKeys] = useState<readonly Pose[]>([]);
  const strip = useMemo(() => ({ poses: keys, seconds: KEY_SECONDS, moves: true }), [keys]);
  function keep() {
    setKeys([...keys, store.get().pose]);
    dispatch({ do: 'say', said: `Key ${keys.length + 1} is kept.` });
  }
  return (
    <>
      <Heading rank={2}>A motion</Heading>
      <p className="wb-note">
        Pose the rig, keep the pose as a key, pose it again. Between keys everything goes in proportion.
      </p>
      <p>
        <button type="button" onClick={keep} disabled={keys.length >= MOST_KEYS}>
          Keep this pose as a key
        </button>{' '}
        {keys.length > 0 && (
          <button type="button" onClick={() => setKeys([])}>
            Let the keys go
          </button>
        )}{' '}
        <span className="wb-note">
          {keys.length === 1 ? 'One key; a motion needs two.' : keys.length > 1 ? `${keys.length} keys.` : ''}
        </span>
      </p>
      {keys.length > 1 && <PlayLine key={keys.length} name="Motion" strip={strip} speed={speed} />}
    </>
  );
}
