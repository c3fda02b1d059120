import { useState } from 'react';
import { readSubmissionText } from '../../../delivery/submission/readSubmission.ts';
import { isReceiptOf, receiptOf } from '../../../delivery/submission/receipt.ts';
import { Field } from '../parts/Field.tsx';
import { FileButton } from '../parts/FileButton.tsx';
import { refusalWords } from '../refusal-words.ts';

/** Tells whether a receipt is that of a file. */
export function CheckReceipt() {
  const [receipt, setReceipt] = useState('');
  const [told, setTold] = useState('');

  function check(text: string, name: string) {
    const read = readSubmissionText(text);
    if (!read.ok) return setTold(`${name} is no submission. ${refusalWords(read.refusal)}`);
    const own = receiptOf(read.value);
    if (receipt.trim() === '') return setTold(`The receipt of ${name} is ${own}.`);
    if (isReceiptOf(receipt, read.value)) return setTold(`It fits: ${name} is the file with this receipt.`);
    setTold(`It does not fit: the receipt of ${name} is ${own}.`);
  }

  return (
    <>
      <Field label="A receipt" value={receipt} onChange={setReceipt} />
      <p className="files-line">
        <FileButton words="Check a submission against it" accept=".json,application/json" onText={check} />
        <span role="status">{told}</span>
      </p>
    </>
  );
}
