import { useId } from 'react';
import { useBench, useSession } from '../state/bench.ts';

/** A repair begins with naming the fault. The faults stand in an order that gives nothing away. */
export function FaultGuess() {
  const { exercise, dispatch } = useBench();
  const guess = useSession((now) => now.guess);
  const name = useId();
  return (
    <fieldset className="wb-guess">
      <legend>What is the fault?</legend>
      {exercise.wrongTurns
        .toSorted((a, b) => a.says.localeCompare(b.says, 'en'))
        .map(({ id, says }) => (
          <label key={id}>
            <input
              type="radio"
              name={name}
              checked={guess === id}
              onChange={() => dispatch({ do: 'guess', guess: id })}
            />{' '}
            {says}
          </label>
        ))}
    </fieldset>
  );
}

/** Once the repair is done: whether the fault had been named. */
export function FaultNamed({ guess }: { guess: string | null }) {
  const { exercise } = useBench();
  const fault = exercise.wrongTurns.find(({ id }) => id === exercise.fault);
  if (!fault) return null;
  if (guess === fault.id) return <p>You had named the fault: {fault.says}</p>;
  return <p>The fault was another than you had named: {fault.says}</p>;
}
