import type { Driver } from '../../solver/document/rig.ts';
import { keySentences, mapSentence } from '../sentence/mapSentence.ts';
import { SentenceView } from '../words/SentenceView.tsx';
import { MapPlot } from './MapPlot.tsx';

/** A driver's map: as a plot, and as words that do all the plot does. */
export function DriverMapView({ driver, slot }: { driver: Driver; slot: string }) {
  return (
    <div className="wb-map">
      <MapPlot driver={driver} slot={slot} />
      <div>
        <p className="wb-sentence">
          <SentenceView slot={`map ${driver.name}`} sentence={mapSentence(driver)} />
        </p>
        <ul className="wb-keys" aria-label={`Keys of the map of ${driver.name}`}>
          {keySentences(driver).map((sentence, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: keys have no identity but their place in the map
            <li key={i}>
              <SentenceView slot={`key ${i} ${driver.name}`} sentence={sentence} />
            </li>
          ))}
        </ul>
      </div>
    </div>
  );
}
