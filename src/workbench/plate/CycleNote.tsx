import { useCycle } from '../state/solvedNow.ts';

/** A rig with a cycle cannot be evaluated: the walk by name, beside the last picture that could be. */
export function CycleNote() {
  const cycle = useCycle();
  if (cycle.length === 0) return null;
  return (
    <p className="wb-refusal" role="alert">
      This rig has a cycle, so no order of evaluation works: {cycle.join(' → ')}. The plate shows the last state that
      worked.
    </p>
  );
}
