import { useSession } from '../state/bench.ts';

/** Under the sentence in which an edit was refused: what stood there, and what was expected. */
export function RefusalAt({ slot, id }: { slot: string; id?: string }) {
  const refused = useSession((session) => session.refused);
  if (refused?.slot !== slot) return null;
  const { found, expected, place } = refused.refusal;
  return (
    <span className="wb-refusal" id={id} role="alert">
      Not done: found {found}, expected {expected}{' '}
      <small>
        (at <code>{place}</code>)
      </small>
      .
    </span>
  );
}
