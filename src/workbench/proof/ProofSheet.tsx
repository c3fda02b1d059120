import { useMemo } from 'react';
import { useBench } from '../state/bench.ts';
import { Heading } from '../words/Heading.tsx';
import { Attempts } from './Attempts.tsx';
import { FaultGuess, FaultNamed } from './FaultGuess.tsx';
import { Hints } from './Hints.tsx';
import { RequirementLine } from './RequirementLine.tsx';
import { readinessWords } from './readiness.ts';
import { saidOnce } from './saidOnce.ts';
import { useProof } from './useProof.ts';
import { useReadiness } from './useReadiness.ts';
import { verdict } from './verdict.ts';

/** What only paper needs: which variant it was, when, and what a mark on paper is worth. */
function Printed({ when }: { when: number }) {
  const { exercise } = useBench();
  return (
    <p className="wb-printed">
      {exercise.title}, variant {exercise.seed}, proved {new Date(when).toLocaleString()}. The mark that a browser shows
      is provisional: the one that counts is made again from the answer.
    </p>
  );
}

/** The proof sheet: what was asked, what was measured, in which pose, and one button to see it. */
export function ProofSheet() {
  const { exercise, redraw } = useBench();
  const { prove, proving } = useProof();
  const ready = useReadiness();
  const { proof, stale, waits, answered } = ready;
  const said = useMemo(() => proof && saidOnce(exercise, proof), [exercise, proof]);
  const results = useMemo(() => new Map(proof?.result.requirements.map((each) => [each.id, each])), [proof]);
  return (
    <section className="wb-proof" aria-label={`Proof sheet of ${exercise.title}`}>
      <Heading rank={1}>Proof sheet</Heading>
      {exercise.kind === 'repair' && <FaultGuess />}
      <p className="wb-prove">
        <button
          type="button"
          className="wb-main"
          // A button that is disabled loses the focus, and a proof takes but a moment.
          aria-disabled={proving === 'yes'}
          disabled={waits !== null || answered}
          onClick={() => void prove()}
        >
          Prove it
        </button>
        {answered && (
          <button type="button" onClick={() => void redraw()}>
            Draw another
          </button>
        )}
        <span className="wb-note">{proving === 'yes' ? 'Proving …' : readinessWords(ready, exercise)}</span>
      </p>
      {proving === 'failed' && <p className="wb-refusal">The proof could not be made. Your work is as it was.</p>}
      {proof && (
        <p className="wb-verdict">
          {verdict(proof.result)} {stale && 'Your work has changed since.'}
        </p>
      )}
      {proof?.result.passed && exercise.kind === 'repair' && <FaultNamed guess={proof.guess} />}
      <ol className={stale ? 'wb-requirements stale' : 'wb-requirements'}>
        {exercise.requirements.map((requirement) => (
          <RequirementLine
            key={requirement.id}
            requirement={requirement}
            result={results.get(requirement.id)}
            message={said?.get(requirement.id) ?? proof?.messages[requirement.id] ?? ''}
          />
        ))}
      </ol>
      {proof && <Printed when={proof.when} />}
      <Hints />
      <Attempts />
    </section>
  );
}
