import { type Exercise, wrongTurnText } from '../../grader/index.ts';
import type { ProofRecord } from './record.ts';

type Proved = Pick<ProofRecord, 'result' | 'messages'>;

/**
 * What the sheet says of each requirement that is missed, from the top: what was said of one above is not said again, be it
 * the whole message or the wrong turn that both show.
 */
export function saidOnce(exercise: Exercise, { result, messages }: Proved): Map<string, string> {
  const said = new Set<string>();
  const missed = result.requirements.filter(({ status }) => status === 'missed');
  const results = new Map(missed.map((one) => [one.id, one]));
  return new Map(
    exercise.requirements.flatMap(({ id }): [string, string][] => {
      const one = results.get(id);
      if (!one) return [];
      const [message, tells] = [messages[id] ?? '', wrongTurnText(exercise, one)];
      const isRepeated = said.has(message);
      const isTold = tells !== '' && said.has(tells);
      said.add(message).add(tells);
      if (isRepeated) return [[id, 'The same as above.']];
      return [[id, isTold ? message.replace(tells, 'The reason is told above.') : message]];
    }),
  );
}
