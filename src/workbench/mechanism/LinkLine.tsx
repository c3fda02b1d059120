import type { Link } from '../../solver/document/rig.ts';
import { renameLink, reorderLink } from '../edit/changeLink.ts';
import { removeLink } from '../edit/removeLink.ts';
import { isKept, linkSentence } from '../sentence/linkSentence.ts';
import type { Scope } from '../sentence/scope.ts';
import { useBench } from '../state/bench.ts';
import { useCycle } from '../state/solvedNow.ts';
import { SentenceView } from '../words/SentenceView.tsx';
import { TextWord } from '../words/TextWord.tsx';
import { LinkAcross } from './Across.tsx';
import { Asides } from './Asides.tsx';

interface Props {
  scope: Scope;
  bone: string;
  link: Link;
}

/** One link as a sentence, its name in the margin. */
export function LinkLine({ scope, bone, link }: Props) {
  const { edit, idOf } = useBench();
  const cycle = useCycle();
  const slot = `link ${bone}.${link.name}`;
  const kept = isKept(scope, bone, link.name);
  const of = `${link.name} on ${bone}`;
  return (
    <li id={idOf(slot)} className="wb-sentence" data-link={link.name}>
      <span className="wb-margin">
        {kept ? (
          <i>{link.name}</i>
        ) : (
          <TextWord
            label={`name of ${of}`}
            value={link.name}
            put={(name) => edit(renameLink(bone, link.name, name), slot)}
          />
        )}
      </span>
      <SentenceView slot={slot} sentence={linkSentence(scope, bone, link)} />
      {cycle.includes(`${bone}.${link.name}`) && <span className="wb-refusal"> This link is part of the cycle.</span>}
      {!kept && (
        <Asides
          of={of}
          slot={slot}
          move={(places) => reorderLink(bone, link.name, places)}
          remove={removeLink(bone, link.name)}
        >
          <LinkAcross slot={slot} bone={bone} link={link.name} />
        </Asides>
      )}
    </li>
  );
}
