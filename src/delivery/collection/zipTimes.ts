/*
 * When the files of a zip were last changed, from its central directory (PKWARE APPNOTE 6.3, 4.3.12, and the extended
 * timestamp of Info-ZIP, extra field 0x5455; from memory). The zip library that unpacks does not tell.
 */

const ENTRY = 0x02014b50;
const EXTENDED = 0x5455;
/** General purpose bit 11. */
const UTF8 = 0x800;

/** As the library that unpacks reads names: UTF-8 where the entry says so, else byte by byte. */
const nameOf = (bytes: Uint8Array, isUtf8: boolean): string =>
  isUtf8 ? new TextDecoder().decode(bytes) : String.fromCharCode(...bytes);

/** By name; a time without a zone is read as one of this machine. Empty where there is no central directory. */
export function zipTimes(bytes: Uint8Array): Map<string, string> {
  const times = new Map<string, string>();
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = directoryStart(view);
  while (at !== null && at + 46 <= view.byteLength && view.getUint32(at, true) === ENTRY) {
    const [nameLength, extraLength, noteLength] = [28, 30, 32].map((offset) => view.getUint16(at! + offset, true));
    const extraAt = at + 46 + nameLength!;
    const next = extraAt + extraLength! + noteLength!;
    if (next > view.byteLength) break;
    const name = nameOf(bytes.subarray(at + 46, extraAt), (view.getUint16(at + 8, true) & UTF8) !== 0);
    const time =
      extendedTime(view, extraAt, extraLength!) ??
      dosTime(view.getUint16(at + 14, true), view.getUint16(at + 12, true));
    if (time !== null && Number.isFinite(time)) times.set(name, new Date(time).toISOString());
    at = next;
  }
  return times;
}

/** The end record stands last, before a note of at most 65,535 bytes. */
function directoryStart(view: DataView): number | null {
  const least = Math.max(0, view.byteLength - 22 - 0xffff);
  for (let at = view.byteLength - 22; at >= least; at--) {
    if (view.getUint32(at, true) === 0x06054b50) return view.getUint32(at + 16, true);
  }
  return null;
}

function extendedTime(view: DataView, from: number, length: number): number | null {
  let at = from;
  while (at + 4 <= from + length) {
    const size = view.getUint16(at + 2, true);
    const hasTime = size >= 5 && at + 4 + size <= from + length && (view.getUint8(at + 4) & 1) === 1;
    if (view.getUint16(at, true) === EXTENDED && hasTime) return 1000 * view.getInt32(at + 5, true);
    at += 4 + size;
  }
  return null;
}

/** Two-second steps since 1980, in the time of whoever made the zip. */
function dosTime(date: number, time: number): number | null {
  if (date === 0) return null;
  const [year, month, day] = [1980 + (date >> 9), ((date >> 5) & 15) - 1, date & 31];
  return new Date(year, month, day, time >> 11, (time >> 5) & 63, (time & 31) * 2).getTime();
}
