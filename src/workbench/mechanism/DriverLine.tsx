import type { Driver } from '../../solver/document/rig.ts';
import { removeDriver, reorderDriver } from '../edit/drivers.ts';
import { driverSentence } from '../sentence/driverSentence.ts';
import { keySentences, mapSentence } from '../sentence/mapSentence.ts';
import type { Scope } from '../sentence/scope.ts';
import { useBench } from '../state/bench.ts';
import { SentenceView } from '../words/SentenceView.tsx';
import { Asides } from './Asides.tsx';
import { CopyDriverAcross } from './CopyAcross.tsx';
import { MapPlot } from './MapPlot.tsx';

/** One driver: its sentence, and its map as words beside a small plot. */
export function DriverLine({ scope, driver }: { scope: Scope; driver: Driver }) {
  const { idOf, cycle } = useBench();
  const slot = `driver ${driver.name}`;
  return (
    <li id={idOf(slot)} className="wb-row" data-driver={driver.name}>
      <p className="wb-sentence">
        <SentenceView slot={slot} sentence={driverSentence(scope, driver)} />
        {cycle.includes(driver.name) && <span className="wb-refusal"> This driver is part of the cycle.</span>}
        <Asides
          of={driver.name}
          slot={slot}
          move={(places) => reorderDriver(driver.name, places)}
          remove={removeDriver(driver.name)}
        >
          <CopyDriverAcross slot={slot} driver={driver.name} />
        </Asides>
      </p>
      <div className="wb-map">
        <MapPlot driver={driver} slot={slot} />
        <div>
          <p className="wb-sentence">
            <SentenceView slot={`map ${driver.name}`} sentence={mapSentence(driver)} />
          </p>
          <ul className="wb-keys" aria-label={`Keys of the map of ${driver.name}`}>
            {keySentences(driver).map((sentence, i) => (
              // Keys have no identity but their place in the map.
              // biome-ignore lint/suspicious/noArrayIndexKey: see above
              <li key={i}>
                <SentenceView slot={`key ${i} ${driver.name}`} sentence={sentence} />
              </li>
            ))}
          </ul>
        </div>
      </div>
    </li>
  );
}
