import { useState } from 'react';
import type { DriverSource } from '../../solver/document/rig.ts';
import { freshName } from '../edit/draft.ts';
import { addDriver } from '../edit/drivers.ts';
import { outputFrom, outputOptions } from '../sentence/outputs.ts';
import type { Option } from '../sentence/piece.ts';
import { allSwitches, type Scope } from '../sentence/scope.ts';
import { useBench } from '../state/bench.ts';
import { Choice } from '../words/Choice.tsx';

/** A new driver is begun as a sentence; it is added once it says what it reads and what it sets. */
export function AddDriver({ scope }: { scope: Scope }) {
  const { edit, goTo, idOf } = useBench();
  const [open, setOpen] = useState(false);
  const [from, setFrom] = useState('');
  const [output, setOutput] = useState('');
  const slot = 'new driver';

  function begin() {
    setOpen(true);
    goTo(slot);
  }

  function add() {
    const taken = (scope.draft.rig.drivers ?? []).map((driver) => driver.name);
    edit(addDriver(JSON.parse(from) as DriverSource, outputFrom(output)), slot);
    goTo(`driver ${freshName('driver', taken)}`);
    setOpen(false);
    setFrom('');
    setOutput('');
  }

  if (!open) {
    return (
      <button type="button" onClick={begin}>
        Add a driver
      </button>
    );
  }
  return (
    <span className="wb-new" id={idOf(slot)}>
      A new driver reads{' '}
      <Choice
        label="what the new driver reads"
        value={from}
        options={[{ value: '', says: 'what?' }, ...sources(scope)]}
        choose={setFrom}
      />{' '}
      and sets{' '}
      <Choice
        label="what the new driver sets"
        value={output}
        options={[{ value: '', says: 'what?' }, ...outputOptions(scope.draft.rig)]}
        choose={setOutput}
      />{' '}
      <button type="button" disabled={from === '' || output === ''} onClick={add}>
        Add it
      </button>{' '}
      <button type="button" className="wb-aside" onClick={() => setOpen(false)}>
        leave it
      </button>
    </span>
  );
}

/** Switches first, then what can be read of each bone; axes and points are chosen in the sentence afterwards. */
function sources(scope: Scope): Option[] {
  const { bones } = scope.draft.rig;
  const option = (from: DriverSource, says: string, group: string) => ({ value: JSON.stringify(from), says, group });
  return [
    ...allSwitches(bones).map((name) => option({ switch: name }, `the switch ${name}`, 'switches')),
    ...bones.flatMap(({ name }) => [
      option({ turn: { bone: name, axis: 'z' } }, `the turn of ${name}`, name),
      option({ shift: { bone: name, axis: 'z' } }, `the shift of ${name}`, name),
      option({ gap: [{ bone: name }, { bone: otherThan(name, bones) }] }, `the gap from ${name}`, name),
    ]),
  ];
}

function otherThan(name: string, bones: readonly { name: string }[]): string {
  return bones.find((bone) => bone.name !== name)?.name ?? name;
}
