/**
 * Times the mark book: folders of 250 to 2,000 submissions of ten answers each, marked by the command, with the most memory
 * it took. Time should grow in a straight line, memory hardly at all. Absolute times are of this machine and how busy it is.
 * Usage: node benchmarks/marking.ts [MOST]
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { answerOf, assignmentOf } from '../test/delivery/support.ts';

const IDS = ['one-vane', 'how-high-the-hook', 'two-vanes-one-holder', 'flinch', 'lantern-on-the-boom'];
const most = Number(process.argv[2] ?? 2000);
const assignment = assignmentOf({ exercises: IDS.map((id) => ({ id, weight: 1 })) });
const folder = mkdtempSync(join(tmpdir(), 'marking-'));
const file = join(folder, 'a.json');
writeFileSync(file, JSON.stringify(assignment));

/** A learner's submission: each exercise twice, first wrong, then right. */
function submission(learner: string): string {
  const answers = IDS.flatMap((id) => [true, false].map((wrong) => answerOf(assignment, learner, id, { wrong })));
  return JSON.stringify({ format: 'counterpose/submission', version: 1, assignment: assignment.id, learner, answers });
}

/** The most memory of a process so far, MiB, where the system tells. */
function peakOf(pid: number): number {
  const line = /^VmHWM:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8'));
  return line ? Number(line[1]) / 1024 : 0;
}

async function marked(path: string): Promise<{ seconds: number; peakMiB: number }> {
  const started = performance.now();
  const command = join(import.meta.dirname, '../src/cli/counterpose.mjs');
  const args = [command, 'markbook', path, '--assignment', file, '--secret', '1', '--out', join(folder, 'marks.csv')];
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'ignore', 'inherit'] });
  let peakMiB = 0;
  const watch = setInterval(() => {
    try {
      peakMiB = Math.max(peakMiB, peakOf(child.pid!));
    } catch {
      // It has ended, or the system has no such file.
    }
  }, 50);
  await new Promise((done) => child.on('close', done));
  clearInterval(watch);
  return { seconds: (performance.now() - started) / 1000, peakMiB };
}

for (let count = most / 8; count <= most; count *= 2) {
  const path = mkdtempSync(join(folder, 'in-'));
  for (let n = 0; n < count; n++) writeFileSync(join(path, `${n}.json`), submission(`player-${n}`));
  const { seconds, peakMiB } = await marked(path);
  const each = ((1000 * seconds) / count).toFixed(1);
  console.log(
    `${count} submissions of 10: ${seconds.toFixed(1)} s, ${each} ms each, ${peakMiB.toFixed(0)} MiB at most`,
  );
  rmSync(path, { recursive: true });
}
rmSync(folder, { recursive: true });
