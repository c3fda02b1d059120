import { useState } from 'react';
import type { LinkKind } from '../../solver/document/rig.ts';
import { addLink } from '../edit/addLink.ts';
import { boneOf, freshName } from '../edit/draft.ts';
import { DOES, KINDS } from '../sentence/linkSentence.ts';
import type { Option } from '../sentence/piece.ts';
import { boneOptions, type Scope } from '../sentence/scope.ts';
import { useBench } from '../state/bench.ts';
import { Choice } from '../words/Choice.tsx';

const ASK: Option = { value: '', says: 'does what?' };

/** A new link is begun as a sentence; it is added once it says what it does, and to which bone. */
export function AddLink({ scope, bone }: { scope: Scope; bone: string }) {
  const { edit, goTo, idOf } = useBench();
  const [kind, setKind] = useState<LinkKind | '' | null>(null);
  const [other, setOther] = useState('');
  const slot = `new link ${bone}`;

  function begin() {
    setKind('');
    goTo(slot);
  }

  function add() {
    if (!kind) return;
    const taken = boneOf(scope.draft, bone)?.links?.map((link) => link.name) ?? [];
    edit(addLink(bone, kind, kind === 'limit' ? bone : other), slot);
    goTo(`link ${bone}.${freshName(kind, taken)}`);
    setKind(null);
    setOther('');
  }

  if (kind === null) {
    return (
      <button type="button" onClick={begin}>
        Add a link<span className="unseen"> to {bone}</span>
      </button>
    );
  }
  const kinds = KINDS.map(({ value }) => ({ value, says: DOES[value] }));
  const ready = kind === 'limit' || (kind !== '' && other !== '');
  return (
    <span className="wb-new" id={idOf(slot)}>
      <b>{bone}</b>{' '}
      <Choice
        label={`what the new link on ${bone} does`}
        value={kind}
        options={[ASK, ...kinds]}
        choose={(value) => setKind(value as LinkKind | '')}
      />{' '}
      {kind !== 'limit' && (
        <Choice
          label={`bone for the new link on ${bone}`}
          value={other}
          options={[{ value: '', says: 'which bone?' }, ...boneOptions(scope, bone)]}
          choose={setOther}
        />
      )}{' '}
      <button type="button" disabled={!ready} onClick={add}>
        Add it
      </button>{' '}
      <button type="button" className="wb-aside" onClick={() => setKind(null)}>
        leave it
      </button>
    </span>
  );
}
