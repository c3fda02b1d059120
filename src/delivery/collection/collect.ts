import { fieldOf } from '../../solver/document/structures.ts';
import { type Collected, type CollectedFile, LIMITS, stray } from './collected.ts';
import { isZip, unzipped } from './unzipped.ts';

/** Files that systems put beside the ones people make. */
const OF_SYSTEMS = /(^|\/)(__MACOSX\/|\.|Thumbs\.db$|desktop\.ini$)/;
const BYTE_ORDER_MARK = 0xfeff;
const WANTED = 'a submission: JSON in UTF-8';

/**
 * Goes through a collection file by file: a folder, or what was in a zip, or zips in a folder. A zip inside a zip is not
 * opened. Nothing throws, and only one file is in memory at a time.
 */
export async function* collect(
  files: Iterable<CollectedFile> | AsyncIterable<CollectedFile>,
): AsyncGenerator<Collected> {
  for await (const file of files) yield* collectedFrom(file, true);
}

async function* collectedFrom(file: CollectedFile, opensZips: boolean): AsyncGenerator<Collected> {
  const { path, collected } = file;
  if (OF_SYSTEMS.test(path)) return yield stray(path, 'a file of some system', WANTED);
  const bytes = await readGuarded(file);
  if (!(bytes instanceof Uint8Array)) return yield bytes;
  if (!isZip(bytes)) return yield textOf(path, collected, bytes);
  if (!opensZips) return yield stray(path, 'a zip inside a zip', WANTED);
  for (const inner of unzipped(bytes, path)) {
    if ('kind' in inner) yield inner;
    else yield* collectedFrom(inner, false);
  }
}

async function readGuarded({ path, read }: CollectedFile): Promise<Uint8Array | Collected> {
  try {
    return (await read()) ?? stray(path, `a file of more than ${LIMITS.file} bytes`, WANTED);
  } catch (error) {
    return stray(path, `a file that cannot be read: ${(error as Error).message}`, WANTED);
  }
}

function textOf(path: string, collected: string | null, bytes: Uint8Array): Collected {
  if (bytes.length > LIMITS.file) return stray(path, `a file of ${bytes.length} bytes`, `at most ${LIMITS.file}`);
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return stray(path, 'bytes that are not UTF-8', WANTED);
  }
  const plain = text.charCodeAt(0) === BYTE_ORDER_MARK ? text.slice(1) : text;
  if (!/^\s*\{/.test(plain)) return stray(path, 'a text that is no JSON object', WANTED);
  return { kind: 'text', path, collected, text: plain };
}

/** Whether plain data says that it is of a format: "submission", "answer". */
export const isOf = (value: unknown, format: string): boolean => fieldOf(value, 'format') === `counterpose/${format}`;
