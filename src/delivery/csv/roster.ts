import { reading, refuse } from '../../solver/document/reader.ts';
import type { Reading } from '../../solver/document/refusal.ts';
import { quoted } from '../../solver/document/words.ts';
import { readTable } from './table.ts';

/** Who is in a class. */
export interface Roster {
  learners: readonly { learner: string; name: string }[];
}

/** Reads a roster: CSV with at least the columns learner and name; others are passed over. */
export const readRoster = (text: string): Reading<Roster> =>
  reading(() => {
    const { head, rows, isBroken } = readTable(text);
    if (isBroken) refuse('a quote that is never closed', 'every quote closed again');
    const columns = head.map((title) => title.trim().toLowerCase());
    const [codeAt, nameAt] = ['learner', 'name'].map((wanted) => columns.indexOf(wanted));
    if (codeAt! < 0 || nameAt! < 0)
      refuse(`the columns ${head.map(quoted).join(', ')}`, 'at least learner and name', [0]);
    const seen = new Set<string>();
    const learners = rows.map((row, i) => {
      const learner = (row[codeAt!] ?? '').trim();
      if (learner === '') refuse('a line without a code', 'a code for each learner', [i + 1]);
      if (seen.has(learner)) refuse(`${quoted(learner)} a second time`, 'each code once', [i + 1]);
      seen.add(learner);
      return { learner, name: (row[nameAt!] ?? '').trim() };
    });
    return { learners };
  });
