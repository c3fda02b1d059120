import type { Switch } from '../../solver/document/rig.ts';
import { removeSwitch, reorderSwitch } from '../edit/switches.ts';
import type { Scope } from '../sentence/scope.ts';
import { isKeptSwitch, switchSentence } from '../sentence/switchSentence.ts';
import { useBench } from '../state/bench.ts';
import { SentenceView } from '../words/SentenceView.tsx';
import { Asides } from './Asides.tsx';

interface Props {
  scope: Scope;
  bone: string;
  own: Switch;
}

export function SwitchLine({ scope, bone, own }: Props) {
  const { idOf } = useBench();
  const slot = `switch ${bone}.${own.name}`;
  return (
    <li id={idOf(slot)} className="wb-sentence">
      <SentenceView slot={slot} sentence={switchSentence(scope, bone, own)} />
      {!isKeptSwitch(scope, bone, own.name) && (
        <Asides
          of={`the switch ${bone}.${own.name}`}
          slot={slot}
          move={(places) => reorderSwitch(bone, own.name, places)}
          remove={removeSwitch(bone, own.name)}
        />
      )}
    </li>
  );
}
