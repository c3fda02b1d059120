/**
 * Times the solver against three, gl-matrix and hand-written loops, prints a table and keeps the numbers in
 * results/<version>-<day>.json. Only ratios within one run mean anything. Names of rows to run may be given.
 */
import { writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import packageJson from '../package.json' with { type: 'json' };
import { type Contest, hold, type Result } from './contest.ts';
import { aim } from './rows/aim.ts';
import { aimWithUp } from './rows/aimWithUp.ts';
import { compiling } from './rows/compiling.ts';
import { gazeRig } from './rows/gazeRig.ts';
import { manyRigs } from './rows/manyRigs.ts';
import { reach } from './rows/reach.ts';
import { skinning } from './rows/skinning.ts';
import { wholeRig } from './rows/wholeRig.ts';
import { worldMatrices } from './rows/worldMatrices.ts';
import { table } from './table.ts';

const ROWS: Record<string, () => Contest> = {
  'world-50': () => worldMatrices(50),
  'world-1000': () => worldMatrices(1000),
  'world-10000': () => worldMatrices(10_000),
  aim,
  'aim-up': aimWithUp,
  reach,
  skinning,
  'whole-rig': wholeRig,
  'gaze-rig': gazeRig,
  'many-rigs': manyRigs,
  compile: compiling,
};

const wanted = process.argv.slice(2);
const results: Result[] = [];
for (const [name, row] of Object.entries(ROWS)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  results.push(await hold(row()));
}
console.log(table(results));
if (wanted.length === 0) keep();

function keep(): void {
  const day = new Date().toISOString().slice(0, 10);
  const machine = { node: process.version, processor: cpus()[0].model, processors: cpus().length };
  const file = new URL(`results/${packageJson.version}-${day}.json`, import.meta.url);
  writeFileSync(file, `${JSON.stringify({ version: packageJson.version, day, machine, results }, null, 2)}\n`);
}
