import { Buffer, isUtf8 } from 'node:buffer';
import { open } from 'node:fs/promises';
import type { Reading } from '../solver/document/refusal.ts';

/** Largest document that is read, in bytes: 1 MiB. */
export const DOCUMENT_BYTES_MAX = 1024 * 1024;

const EXPECTED = 'a JSON document in UTF-8';
const BYTE_ORDER_MARK = Buffer.from([0xef, 0xbb, 0xbf]);

/** The text of a file, or why it cannot be read. Reads no more than DOCUMENT_BYTES_MAX + 1 bytes, of pipes too. */
export async function readTextFile(path: string): Promise<Reading<string>> {
  let file: Awaited<ReturnType<typeof open>> | undefined;
  try {
    file = await open(path);
    const bytes = await readBounded(file);
    return decodeDocument(bytes, EXPECTED);
  } catch (error) {
    return refuse(whatStands(error as NodeJS.ErrnoException), EXPECTED);
  } finally {
    await file?.close();
  }
}

async function readBounded(file: Awaited<ReturnType<typeof open>>): Promise<Buffer> {
  const chunks: Buffer[] = [];
  let length = 0;
  while (length <= DOCUMENT_BYTES_MAX) {
    const { bytesRead, buffer } = await file.read({ buffer: Buffer.allocUnsafe(64 * 1024), position: null });
    if (bytesRead === 0) break;
    chunks.push(buffer.subarray(0, bytesRead));
    length += bytesRead;
  }
  return Buffer.concat(chunks, length);
}

/** Text from the bytes of one document. Refuses what is too large, begins with a byte order mark or is not UTF-8. */
export function decodeDocument(bytes: Buffer, expected: string): Reading<string> {
  if (bytes.length > DOCUMENT_BYTES_MAX) return refuse('more than 1 MiB', `${expected}, 1 MiB at most`);
  if (bytes.subarray(0, 3).equals(BYTE_ORDER_MARK)) return refuse('a byte order mark', `${expected} without one`);
  if (!isUtf8(bytes)) return refuse('bytes that are not UTF-8', expected);
  return { ok: true, value: bytes.toString('utf8') };
}

function whatStands(error: NodeJS.ErrnoException): string {
  if (error.code === 'ENOENT' || error.code === 'ENOTDIR') return 'no such file';
  if (error.code === 'EISDIR') return 'a folder';
  if (error.code === 'EACCES' || error.code === 'EPERM') return 'a file that may not be read';
  return `a file that cannot be read (${error.code ?? error.message})`;
}

function refuse(found: string, expected: string): Reading<never> {
  return { ok: false, refusal: { place: '', found, expected } };
}
