import type { Edit } from '../edit/draft.ts';
import { useBench } from '../state/bench.ts';

interface Props {
  /** What the buttons act on, in words: "watch on vane_left". */
  of: string;
  slot: string;
  move?: (places: number) => Edit;
  remove: Edit;
  /** What else goes when it is taken away. */
  warning?: readonly string[];
  children?: React.ReactNode;
}

/** The small words at the end of a sentence that move it or take it away. */
export function Asides({ of, slot, move, remove, warning = [], children }: Props) {
  const { edit, dispatch } = useBench();
  function takeAway() {
    edit(remove, slot);
    if (warning.length > 0)
      dispatch({ do: 'say', said: `Gone with ${of}: ${warning.join(', ')}. Undo brings it back.` });
  }
  return (
    <span className="wb-asides">
      {move && (
        <>
          <button type="button" className="wb-aside" aria-label={`Move ${of} up`} onClick={() => edit(move(-1), slot)}>
            up
          </button>
          <button type="button" className="wb-aside" aria-label={`Move ${of} down`} onClick={() => edit(move(1), slot)}>
            down
          </button>
        </>
      )}
      {children}
      <button type="button" className="wb-aside" aria-label={`Take away ${of}`} onClick={takeAway}>
        take away
      </button>
    </span>
  );
}
