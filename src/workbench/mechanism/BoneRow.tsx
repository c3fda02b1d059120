import { useState } from 'react';
import type { Bone } from '../../solver/document/rig.ts';
import { boneOf } from '../edit/draft.ts';
import { goesWith, removeBone } from '../edit/removeBone.ts';
import { reorderBone } from '../edit/reorderBone.ts';
import { addSwitch } from '../edit/switches.ts';
import { boneSentence, lockSentence } from '../sentence/boneSentence.ts';
import { restSentence } from '../sentence/restSentence.ts';
import type { Scope } from '../sentence/scope.ts';
import { useBench, useSession } from '../state/bench.ts';
import { choosing } from '../state/choosing.ts';
import { SentenceView } from '../words/SentenceView.tsx';
import { AddLink } from './AddLink.tsx';
import { Asides } from './Asides.tsx';
import { type Copied, CopyBone } from './CopyBone.tsx';
import { LinkLine } from './LinkLine.tsx';
import { SwitchLine } from './SwitchLine.tsx';

interface Props {
  scope: Scope;
  bone: Bone;
  /** The parts of the task it stands for. */
  serves: readonly string[];
}

/** One bone: what it is, its switches, its links in order, and, opened, its rest and locks. */
export function BoneRow({ scope, bone, serves }: Props) {
  const { store, dispatch, edit, goTo, idOf } = useBench();
  const { name } = bone;
  const isChosen = useSession((session) => session.chosen === name);
  const [open, setOpen] = useState(false);
  const [copied, setCopied] = useState<Copied | null>(null);
  const slot = `bone ${name}`;
  const made = !scope.keeps(name);
  const addOwnSwitch = () => {
    edit(addSwitch(name), slot);
    goTo(`switches ${name}`);
  };
  return (
    <li
      className="wb-row"
      id={idOf(slot)}
      data-bone={name}
      data-chosen={isChosen || undefined}
      {...choosing(() => store.get().chosen !== name && dispatch({ do: 'choose', bone: name }))}
    >
      {serves.length > 0 && <p className="wb-serves">{serves.join(', ')}</p>}
      <p className="wb-sentence">
        <SentenceView slot={slot} sentence={boneSentence(scope, bone)} />
        {made && (
          <Asides
            of={name}
            slot={slot}
            move={(places) => reorderBone(name, places)}
            remove={removeBone(name)}
            warning={goesWith(scope.draft, name)}
          />
        )}
      </p>
      {bone.switches && (
        <ul id={idOf(`switches ${name}`)} aria-label={`Switches of ${name}`}>
          {bone.switches.map((own) => (
            <SwitchLine key={own.name} scope={scope} bone={name} own={own} />
          ))}
        </ul>
      )}
      {bone.links && (
        <ol aria-label={`Links of ${name}, applied in order`}>
          {bone.links.map((link) => (
            <LinkLine key={link.name} scope={scope} bone={name} link={link} />
          ))}
        </ol>
      )}
      <p className="wb-adds">
        <AddLink scope={scope} bone={name} />
        <button type="button" onClick={addOwnSwitch}>
          Add a switch<span className="unseen"> to {name}</span>
        </button>
        <CopyBone bone={name} tell={setCopied} />
        <button type="button" aria-expanded={open} aria-controls={idOf(`rest ${name}`)} onClick={() => setOpen(!open)}>
          Rest and locks<span className="unseen"> of {name}</span>
        </button>
      </p>
      {copied && boneOf(scope.draft, copied.name) && <p className="wb-note">{copied.words}</p>}
      <div id={idOf(`rest ${name}`)} className="wb-rest" hidden={!open}>
        <p className="wb-sentence">
          <SentenceView slot={`rest ${name}`} sentence={restSentence(scope, bone)} />
        </p>
        <p className="wb-sentence">
          <SentenceView slot={`locks ${name}`} sentence={lockSentence(scope, bone)} />
        </p>
      </div>
    </li>
  );
}
