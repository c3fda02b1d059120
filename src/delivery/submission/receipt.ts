import { hashOf } from '../hash.ts';
import type { Submission } from './submission.ts';

/** Without letters that are taken for digits (D. Crockford, Base 32, from memory). */
const DIGITS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const GROUPS = 5;

/**
 * What a learner keeps to show later which file was handed in: the first 100 bits of the SHA-256 over the submission's
 * canonical JSON, in five groups of four. Another file with the same receipt cannot be made on purpose.
 */
export function receiptOf(submission: Submission): string {
  const bits = BigInt(`0x${hashOf(submission).slice(0, (GROUPS * 20) / 4)}`);
  const digits = Array.from({ length: GROUPS * 4 }, (_, i) => DIGITS[Number((bits >> BigInt(5 * i)) & 31n)]).reverse();
  return digits.join('').match(/.{4}/g)!.join('-');
}

/** Whether a receipt, however it was copied, is that of the submission. */
export function isReceiptOf(receipt: string, submission: Submission): boolean {
  const plain = (text: string) =>
    text
      .toUpperCase()
      .replace(/[IL]/g, '1')
      .replaceAll('O', '0')
      .replace(/[^0-9A-Z]/g, '');
  return plain(receipt) === plain(receiptOf(submission));
}
