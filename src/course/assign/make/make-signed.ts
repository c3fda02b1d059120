import type { KeyPair } from '../../../delivery/assignment/assignment.ts';
import { makeAssignment, type Plan } from '../../../delivery/assignment/makeAssignment.ts';
import { sign } from '../../../delivery/assignment/sign.ts';
import { askAudit } from '../audit/ask-audit.ts';
import { type ExerciseFile, exerciseFile } from '../exercise-file.ts';
import { refusalWords } from '../refusal-words.ts';

/** What comes of making an assignment: the signed text, or why it was not made, in sentences. */
export type Made = { text: string } | { faults: string[] };

/** Audits that were sound, so that nothing is audited twice. */
const sound = new Set<string>();

/**
 * Fetches the exercises of a plan, audits every one whose tolerances were changed, and signs.
 * @param tell how far it is, in words
 */
export async function makeSigned(
  plan: Plan,
  pair: KeyPair,
  tell: (words: string) => void,
  signal: AbortSignal,
): Promise<Made> {
  const files = await Promise.all(plan.exercises.map(({ id }) => exerciseFile(id)));
  for (const [i, file] of files.entries()) {
    const faults = await auditFaults(file, plan.exercises[i]!.tolerances ?? {}, tell, signal);
    if (faults.length > 0) return { faults };
  }
  const byId = new Map(files.map(({ definition }) => [definition.id, definition]));
  const made = makeAssignment(plan, (id) => byId.get(id) ?? null);
  if (!made.ok) return { faults: [`The assignment cannot be made. ${refusalWords(made.refusal)}`] };
  return { text: sign(made.value, pair) };
}

async function auditFaults(
  { definition, edition }: ExerciseFile,
  tolerances: Readonly<Record<string, number>>,
  tell: (words: string) => void,
  signal: AbortSignal,
): Promise<string[]> {
  const key = JSON.stringify([definition.id, edition, tolerances]);
  if (Object.keys(tolerances).length === 0 || sound.has(key)) return [];
  tell(`Auditing the tolerances of ${definition.id} …`);
  const audit = await askAudit(
    { definition, edition, tolerances },
    (done, of) => tell(`Auditing the tolerances of ${definition.id}: ${done} of ${of} structures …`),
    signal,
  );
  if (audit.isSound) {
    sound.add(key);
    return [];
  }
  const { rightTried, rightRefused, wrongTried, wrongPassed, findings } = audit;
  const counts = `${rightRefused} of ${rightTried} right rigs would be refused, ${wrongPassed} of ${wrongTried} wrong ones would pass`;
  const shown = findings.slice(0, MOST_FINDINGS);
  const more = findings.length > shown.length ? [`… and ${findings.length - shown.length} more of the kind.`] : [];
  return [
    `The changed tolerances of ${definition.id} do not part right from wrong: ${counts}. Nothing has been saved.`,
    ...shown,
    ...more,
  ];
}

const MOST_FINDINGS = 6;
