/** Audits the whole course and publishes the figures: `npm run audit`. Long; shows how far it has come. */
import { spawn } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { auditSchema } from '../src/course/audit-figures.ts';

const FILE = 'content/audit.json';

const command = spawn(process.execPath, ['src/cli/counterpose.mjs', 'audit', '--full', '--json'], {
  stdio: ['ignore', 'pipe', 'inherit'],
});
let printed = '';
command.stdout.setEncoding('utf8').on('data', (text) => {
  printed += text;
});
command.on('close', (status, signal) => {
  process.exitCode = status ?? 2;
  if (status !== 0 && status !== 1) return console.error(`the audit did not end: ${signal ?? status}`);
  const date = new Date().toISOString().slice(0, 10);
  const figures = auditSchema.parse({ date, ...JSON.parse(printed) });
  writeFileSync(FILE, `${JSON.stringify(figures, null, 2)}\n`);
  console.log(`${FILE}: ${figures.totals.rightTried} right rigs, ${figures.totals.wrongTried} wrong ones`);
});
