/**
 * Everything that must hold before a change goes in, the same for people and for CI: `npm run check`.
 * Stops at the first stage that fails; ends with a line of the real counts, "N passed, N failed".
 */
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { closingLine, countTests, REPORTS } from './test-counts.ts';

/** npm scripts, in the order in which they run. */
const STAGES = ['format:check', 'lint', 'types', 'unit', 'content', 'build', 'browser'] as const;

function runStage(stage: string): boolean {
  console.log(`\n=== ${stage} ${'='.repeat(Math.max(0, 70 - stage.length))}\n`);
  const started = performance.now();
  const { status } = spawnSync('npm', ['run', '--silent', stage], { stdio: ['ignore', 'inherit', 'inherit'] });
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(`\n--- ${stage}: ${status === 0 ? 'holds' : 'FAILED'} (${seconds} s)`);
  return status === 0;
}

for (const report of REPORTS) rmSync(report, { force: true });
const failedStage = STAGES.find((stage) => !runStage(stage));
const counts = countTests();

if (failedStage) console.log(`\nThe check stopped at "${failedStage}"; npm run ${failedStage} runs it alone.`);
if (counts.passed + counts.failed === 0) console.log('\nNo test ran.');
console.log(`\n${closingLine(counts)}`);
process.exitCode = failedStage === undefined && counts.failed === 0 && counts.passed > 0 ? 0 : 1;
