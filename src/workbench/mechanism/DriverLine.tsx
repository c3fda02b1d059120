import type { Driver } from '../../solver/document/rig.ts';
import { removeDriver, reorderDriver } from '../edit/drivers.ts';
import { driverSentence } from '../sentence/driverSentence.ts';
import type { Scope } from '../sentence/scope.ts';
import { useBench } from '../state/bench.ts';
import { useCycle } from '../state/solvedNow.ts';
import { SentenceView } from '../words/SentenceView.tsx';
import { DriverAcross } from './Across.tsx';
import { Asides } from './Asides.tsx';
import { DriverMapView } from './DriverMapView.tsx';

/** One driver: its sentence, and its map. */
export function DriverLine({ scope, driver }: { scope: Scope; driver: Driver }) {
  const { idOf } = useBench();
  const cycle = useCycle();
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
          <DriverAcross slot={slot} driver={driver.name} />
        </Asides>
      </p>
      <DriverMapView driver={driver} slot={slot} />
    </li>
  );
}
