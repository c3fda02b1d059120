import { useId } from 'react';
import type { Edit } from '../edit/draft.ts';
import { type Piece, type Sentence, spoken } from '../sentence/piece.ts';
import { useBench, useSession } from '../state/bench.ts';
import { Choice } from './Choice.tsx';
import { NumberWord } from './NumberWord.tsx';
import { Pick } from './Pick.tsx';
import { RefusalAt } from './RefusalAt.tsx';
import { TextWord } from './TextWord.tsx';

interface Props {
  sentence: Sentence;
  /** Names the sentence on the page; an edit that is refused is told under the sentence it was made in. */
  slot: string;
}

/** A sentence set as running text, its changeable words fields in place. */
export function SentenceView({ sentence, slot }: Props) {
  const { edit } = useBench();
  const refusalId = useId();
  const refused = useSession((session) => session.refused?.slot === slot);
  const make = (change: Edit) => edit(change, slot);
  return (
    <>
      {keyed(sentence).map(([key, piece]) => (
        <PieceView key={key} piece={piece} make={make} refusalId={refused ? refusalId : undefined} />
      ))}
      <RefusalAt slot={slot} id={refusalId} />
    </>
  );
}

interface PieceProps {
  piece: Piece;
  make: (edit: Edit) => void;
  refusalId: string | undefined;
}

function PieceView({ piece, make, refusalId }: PieceProps) {
  const { goTo } = useBench();
  switch (piece.is) {
    case 'text':
      return piece.text;
    case 'name':
      return <b>{piece.text}</b>;
    case 'choice':
      return <Choice {...piece} choose={(value) => make(piece.edit(value))} refusalId={refusalId} />;
    case 'number':
      return <NumberWord {...piece} put={(value) => make(piece.edit(value))} refusalId={refusalId} />;
    case 'word':
      return <TextWord {...piece} put={(value) => make(piece.edit(value))} refusalId={refusalId} />;
    case 'pick':
      return <Pick {...piece} choose={(value) => make(piece.edit(value))} />;
    case 'mark':
      return (
        <label className="wb-mark">
          <input
            type="checkbox"
            aria-label={piece.label}
            checked={piece.on}
            onChange={(event) => make(piece.edit(event.target.checked))}
          />
          <span aria-hidden="true">{piece.text}</span>
        </label>
      );
    case 'press':
      return (
        <button type="button" className="wb-aside" aria-label={spoken(piece)} onClick={() => make(piece.edit)}>
          {piece.text}
        </button>
      );
    case 'goto':
      return (
        <button type="button" className="wb-goto" aria-label={spoken(piece)} onClick={() => goTo(piece.to)}>
          {piece.text}
        </button>
      );
  }
}

/** Pieces keyed by their label where they have one, so that a field keeps the focus while words around it change. */
function keyed(sentence: Sentence): [string, Piece][] {
  return sentence.map((piece, i) => ['label' in piece ? `${piece.is} ${piece.label}` : `${i}`, piece]);
}
