import { useBench, useSession } from '../state/bench.ts';

/** What came of the proofs so far, the last one first. */
export function Attempts() {
  const { exercise } = useBench();
  const proofs = useSession((now) => now.proofs);
  if (proofs.length < 2) return null;
  const says = new Map(exercise.requirements.map(({ id, says: words }) => [id, words]));
  return (
    <details className="wb-attempts">
      <summary>Earlier proofs</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">proof</th>
            <th scope="col">when</th>
            <th scope="col">mark</th>
            <th scope="col">missed</th>
          </tr>
        </thead>
        <tbody>
          {proofs
            .map((proof, i) => ({ ...proof, n: i + 1 }))
            .toReversed()
            .map(({ n, when, result }) => (
              <tr key={n}>
                <th scope="row">{n}</th>
                <td>{new Date(when).toLocaleString()}</td>
                <td>{Math.round(result.mark * 100)} %</td>
                <td>
                  {result.requirements
                    .filter(({ status }) => status !== 'met')
                    .map(({ id }) => says.get(id) ?? id)
                    .join(' ') || 'nothing'}
                </td>
              </tr>
            ))}
        </tbody>
      </table>
    </details>
  );
}
