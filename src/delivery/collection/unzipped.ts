import { unzipSync } from 'fflate';
import { type Collected, type CollectedFile, LIMITS, stray } from './collected.ts';
import { zipTimes } from './zipTimes.ts';

export const isZip = (bytes: Uint8Array): boolean =>
  bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] === 3 || bytes[2] === 5 || bytes[2] === 7);

interface Entry {
  name: string;
  size: number;
}

/**
 * The files of a zip, each unpacked when it is read. Room is made for as many bytes as an entry claims, never more than
 * is allowed, and no more than that is unpacked; so a zip that is larger than it says only breaks its own file.
 * @param within the path of the zip, put before the names in it
 */
export function unzipped(bytes: Uint8Array, within: string): (CollectedFile | Collected)[] {
  let entries: Entry[];
  try {
    entries = entriesOf(bytes);
  } catch (error) {
    return [stray(within, `a zip that cannot be unpacked: ${(error as Error).message}`, 'a zip')];
  }
  const whole = entries.reduce((sum, { size }) => sum + size, 0);
  if (entries.length > LIMITS.entries)
    return [stray(within, `a zip of ${entries.length} files`, `at most ${LIMITS.entries}`)];
  if (whole > LIMITS.whole) return [stray(within, `a zip of ${whole} bytes unpacked`, `at most ${LIMITS.whole}`)];
  if (whole > LIMITS.ratioFrom && whole > LIMITS.ratio * bytes.length) {
    return [
      stray(
        within,
        `a zip that gets ${Math.round(whole / bytes.length)} times as large`,
        `at most ${LIMITS.ratio} times`,
      ),
    ];
  }
  const times = zipTimes(bytes);
  return entries.map(({ name, size }) => ({
    path: within === '' ? name : `${within}/${name}`,
    collected: times.get(name) ?? null,
    read: async () => (size > LIMITS.file ? null : unpacked(bytes, name)),
  }));
}

/** The names in a zip without folders. An entry that stands twice is there once. */
function entriesOf(bytes: Uint8Array): Entry[] {
  const entries = new Map<string, Entry>();
  unzipSync(bytes, {
    filter: ({ name, originalSize }) => {
      if (!name.endsWith('/')) entries.set(name, { name, size: originalSize });
      return false;
    },
  });
  return [...entries.values()];
}

function unpacked(bytes: Uint8Array, wanted: string): Uint8Array {
  const files = unzipSync(bytes, { filter: ({ name }) => name === wanted });
  const found = files[wanted];
  if (!found) throw new Error('the zip does not give it out');
  return found;
}
