import type { ProvedAnswer } from './handing.ts';

/** How an exercise stands, in words; of attempts that are limited only those that count. */
export function standWords(proved: readonly Pick<ProvedAnswer, 'mark'>[], attempts: number | undefined): string {
  const made = proved.length;
  if (made === 0) return attempts === undefined ? 'Not proved yet.' : `None of ${attempts} attempts made.`;
  const best = Math.max(...proved.slice(0, attempts).map(({ mark }) => mark));
  const found = `best so far ${Math.round(best * 100)} %, as found here.`;
  if (attempts === undefined) return `${made === 1 ? 'One proof' : `${made} proofs`}, ${found}`;
  if (made <= attempts) return `${made} of ${attempts} attempts made, ${found}`;
  return `${made} proofs, of which the first ${attempts === 1 ? 'counts' : `${attempts} count`}; ${found}`;
}
