import { useId } from 'react';
import { useBench } from '../state/bench.ts';

/** A repair begins with naming the fault. */
export function FaultGuess() {
  const { session, exercise, dispatch } = useBench();
  const name = useId();
  return (
    <fieldset className="wb-guess">
      <legend>What is the fault?</legend>
      {exercise.wrongTurns.map(({ id, says }) => (
        <label key={id}>
          <input
            type="radio"
            name={name}
            checked={session.guess === id}
            onChange={() => dispatch({ do: 'guess', guess: id })}
          />{' '}
          {says}
        </label>
      ))}
    </fieldset>
  );
}
