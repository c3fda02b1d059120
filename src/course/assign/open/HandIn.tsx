import { useMemo } from 'react';
import type { Assignment } from '../../../delivery/assignment/assignment.ts';
import { receiptOf } from '../../../delivery/submission/receipt.ts';
import { saveFile } from '../../../workbench/keep/saveFile.ts';
import { CopyButton } from '../parts/CopyButton.tsx';
import { type Handing, submissionOf } from './handing.ts';

interface Props {
  assignment: Assignment;
  handing: Handing;
  change: (change: (handing: Handing) => Handing) => void;
}

/** The file to hand in, and its receipt. */
export function HandIn({ assignment, handing, change }: Props) {
  const submission = useMemo(() => submissionOf(handing, assignment), [handing, assignment]);
  const receipt = useMemo(() => receiptOf(submission), [submission]);
  if (submission.answers.length === 0) return <p>Nothing has been proved yet. What you prove goes into the file.</p>;

  function keep() {
    const at = new Date().toISOString();
    change((held) => {
      if (held.receipts.at(-1)?.receipt === receipt) return held;
      return { ...held, receipts: [...held.receipts, { at, receipt }] };
    });
  }
  function save() {
    saveFile(`${handing.learner.replaceAll(/[^\p{L}\p{N}_-]+/gu, '_')}-${assignment.id}.json`, submission);
    keep();
  }

  const proofs = handing.chain.length;
  return (
    <>
      <p>
        The file holds {submission.answers.length === 1 ? 'one answer' : `${submission.answers.length} answers`} and the
        order in which {proofs === 1 ? 'one proof was' : `${proofs} proofs were`} made. Save it and hand it in where
        your instructor collects work; nothing is sent from here.
      </p>
      <p className="files-line">
        <button type="button" onClick={save}>
          Save the file to hand in
        </button>
        <span>
          Receipt: <code className="receipt">{receipt}</code>
        </span>
      </p>
      <details>
        <summary>Hand it in as text instead</summary>
        <CopyButton
          words="Copy the text"
          label="The same submission as one text"
          text={JSON.stringify(submission)}
          onCopy={keep}
        />
      </details>
      <p className="small">
        The receipt belongs to this file alone: note it, and you can show later which file you handed in. The order of
        proofs shows that none was taken out or put in; it does not show who made them.
      </p>
      <Receipts receipts={handing.receipts} />
    </>
  );
}

function Receipts({ receipts }: Pick<Handing, 'receipts'>) {
  if (receipts.length === 0) return null;
  return (
    <>
      <h3>Receipts of what you saved</h3>
      <ul>
        {receipts.map(({ at, receipt }) => (
          <li key={at}>
            <code className="receipt">{receipt}</code>, {new Date(at).toLocaleString('en-GB')} by this computer’s clock
          </li>
        ))}
      </ul>
    </>
  );
}
