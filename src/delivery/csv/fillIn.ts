import { reading, refuse } from '../../solver/document/reader.ts';
import type { Reading } from '../../solver/document/refusal.ts';
import { quoted } from '../../solver/document/words.ts';
import { readTable, writeAsBrought } from './table.ts';

export interface FilledIn {
  csv: string;
  filled: number;
  /** Codes in the file that have no mark, and codes with a mark that are not in the file. */
  withoutMark: string[];
  notInFile: string[];
}

/**
 * Writes marks into a CSV that the instructor brings, by its own columns; all other cells stay as they are.
 * @param marks by learner's code, as they are to stand in the file
 */
export const fillIn = (
  text: string,
  columns: { learner: string; mark: string },
  marks: ReadonlyMap<string, string>,
): Reading<FilledIn> =>
  reading(() => {
    const table = readTable(text);
    if (table.isBroken) refuse('a quote that is never closed', 'every quote closed again');
    const [codeAt, markAt] = [columns.learner, columns.mark].map((title) => columnOf(table.head, title));
    const seen = new Set<string>();
    const withoutMark: string[] = [];
    const rows = table.rows.map((row) => {
      const code = (row[codeAt!] ?? '').trim();
      seen.add(code);
      const mark = marks.get(code);
      if (mark === undefined) {
        withoutMark.push(code);
        return row;
      }
      const wide = [...row, ...Array.from({ length: Math.max(0, markAt! + 1 - row.length) }, () => '')];
      return wide.with(markAt!, mark);
    });
    const notInFile = [...marks.keys()].filter((code) => !seen.has(code));
    const filled = rows.length - withoutMark.length;
    return { csv: writeAsBrought({ ...table, rows }), filled, withoutMark, notInFile };
  });

function columnOf(head: readonly string[], title: string): number {
  const at = head.findIndex((one) => one.trim() === title.trim());
  return at >= 0 ? at : refuse(`the columns ${head.map(quoted).join(', ')}`, `one called ${quoted(title)}`, [0]);
}
