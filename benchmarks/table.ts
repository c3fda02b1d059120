/** Results as a table for people. */
import type { Ask, Result } from './contest.ts';

const COLUMNS = ['work', 'unit', 'ours', 'peer', 'takes', 'asked', ''] as const;

/** One line a peer: what it takes, that in times of ours, what is asked of ours, and whether it is so. */
function linesOf({ work, unit, medians, ratios, asks }: Result): string[][] {
  const peers = Object.keys(ratios);
  if (peers.length === 0) return [[work, unit, shown(medians.ours), '', '', '', '']];
  return peers.map((peer, i) => {
    const ask = asks.find((one) => one.peer === peer);
    const start = i === 0 ? [work, unit, shown(medians.ours)] : ['', '', ''];
    const times = `${shown(medians[peer])} (${ratios[peer].toFixed(2)}×)`;
    return [...start, peer, times, ask ? asked(ask) : '', ask ? met(ask, ratios[peer]) : ''];
  });
}

const shown = (value: number): string => (value >= 100 ? value.toFixed(0) : value.toPrecision(3));
const asked = ({ atLeast }: Ask): string =>
  atLeast >= 1 ? `≥ ${atLeast}×` : `≤ ${(1 / atLeast).toFixed(2)}× its time`;
const met = ({ atLeast }: Ask, ratio: number): string => (ratio >= atLeast ? 'met' : 'not met');

export function table(results: readonly Result[]): string {
  const lines = [[...COLUMNS], ...results.flatMap(linesOf)];
  const widths = COLUMNS.map((_, column) => Math.max(...lines.map((line) => line[column].length)));
  const rows = lines.map((line) =>
    line
      .map((cell, column) => cell.padEnd(widths[column]))
      .join('  ')
      .trimEnd(),
  );
  const notes = results.flatMap(({ work, notes: own }) => own.map((note) => `${work}: ${note}`));
  return [rows[0], '─'.repeat(rows[0].length), ...rows.slice(1), '', ...notes].join('\n');
}
