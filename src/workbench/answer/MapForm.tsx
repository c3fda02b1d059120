import { useMemo } from 'react';
import { DriverMapView } from '../mechanism/DriverMapView.tsx';
import { driverSentence } from '../sentence/driverSentence.ts';
import { fixed } from '../sentence/piece.ts';
import { scopeOf } from '../sentence/scope.ts';
import { useBench, useSession } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';
import { Heading } from '../words/Heading.tsx';
import { SentenceView } from '../words/SentenceView.tsx';

/** The map of one driver, which is all that is asked for. */
export function MapForm() {
  const { exercise } = useBench();
  const draft = useSession(draftOf);
  const scope = useMemo(() => scopeOf(draft, exercise.start, exercise.kept), [draft, exercise]);
  const driver = draft.rig.drivers?.find(({ name }) => name === exercise.shape);
  if (!driver) return null;
  return (
    <section className="wb-mechanism" aria-label={`Mechanism of ${exercise.title}`}>
      <Heading rank={1}>The map</Heading>
      <p className="wb-sentence">
        <SentenceView slot={`driver ${driver.name}`} sentence={fixed(driverSentence(scope, driver))} />
      </p>
      <DriverMapView driver={driver} slot={`driver ${driver.name}`} />
    </section>
  );
}
