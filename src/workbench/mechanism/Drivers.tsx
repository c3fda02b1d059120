import type { Scope } from '../sentence/scope.ts';
import { Heading } from '../words/Heading.tsx';
import { AddDriver } from './AddDriver.tsx';
import { DriverLine } from './DriverLine.tsx';

export function Drivers({ scope }: { scope: Scope }) {
  const drivers = scope.draft.rig.drivers ?? [];
  return (
    <section>
      <Heading rank={2}>Drivers</Heading>
      {drivers.length === 0 ? (
        <p className="wb-none">None yet. A driver lets one number set another.</p>
      ) : (
        <ul className="wb-rows">
          {drivers.map((driver) => (
            <DriverLine key={driver.name} scope={scope} driver={driver} />
          ))}
        </ul>
      )}
      <p className="wb-adds">
        <AddDriver scope={scope} />
      </p>
    </section>
  );
}
