import type { Refusal } from '../../solver/document/refusal.ts';

/** A file of a collection, as it came in. */
export interface CollectedFile {
  /** Its path in the folder or the zip, with forward slashes. */
  path: string;
  /** When it was collected, as the folder or the zip says: ISO 8601 with a zone; null where it does not. */
  collected: string | null;
  /** Its bytes are only read when they are asked for. Null where there are more than may be read. */
  read: () => Promise<Uint8Array | null>;
}

/** What a collection holds: texts that may be submissions, and what is passed over, with why. */
export type Collected =
  | { kind: 'text'; path: string; collected: string | null; text: string }
  | { kind: 'stray'; path: string; refusal: Refusal };

export const LIMITS = {
  /** Bytes of one file. */
  file: 16 * 1024 * 1024,
  /** Files of one zip. */
  entries: 10_000,
  /** Bytes of all files of one zip together. */
  whole: 4 * 1024 * 1024 * 1024,
  /** How many times as large a zip may say it gets, from `ratioFrom` bytes on. Answers get some twenty times as large. */
  ratio: 200,
  ratioFrom: 128 * 1024 * 1024,
} as const;

export const stray = (path: string, found: string, expected: string): Collected => ({
  kind: 'stray',
  path,
  refusal: { place: '', found, expected },
});
