import { courseEdition } from '../../course/edition.ts';
import type { VariantAudit } from '../../grader/audit/auditVariant.ts';
import { type Counts, fails, sumCounts } from '../../grader/audit/counts.ts';
import { readArguments } from '../arguments.ts';
import { Exercises } from '../content.ts';
import { madeText } from '../madeText.ts';
import { print } from '../output.ts';
import { inOrder } from '../pool.ts';
import { Progress } from '../progress.ts';
import type { AuditTask } from '../threads/audit.ts';
import type { ExitStatus, Verb } from '../verb.ts';

const OPTIONS = {
  full: { type: 'boolean' },
  list: { type: 'boolean' },
  json: { type: 'boolean' },
  content: { type: 'string' },
} as const;

/**
 * A quick audit takes the exercise as drawn and some of its mutants; a full one every structure, every size and, but for the
 * largest exercises, every mutant. Those have over a thousand a variant: of them so many are tried, spread over all.
 */
const QUICK = { samples: 200, mutants: 60 };
const FULL = { samples: 400, mutants: 300 };

/** Grades the grader: right rigs must pass, wrong ones must be missed and told apart. */
export const auditVerb: Verb = {
  help: `
Usage: counterpose audit [ID…] [--full] [--json] [--content DIR]
       counterpose audit [ID…] --list [--content DIR]

Makes right rigs (references written in other ways) and wrong ones (wrong turns, and mistakes made in the
references), grades them all, and judges the wrong ones by other means than the proof's. Exits with 1 if a right
rig is refused, a wrong one passes, one stays undecided, a margin is too narrow, or more than 5 % of the
counterposes move more than two inputs.

  --full         every structure, every size and up to 300 mistakes in each
  --list         only names the variants, and the right and wrong rigs that would be made
  --json         for machines
  --content DIR  audit those of this folder of lessons and exercises too
`,
  async run(args): Promise<ExitStatus> {
    const { values, positionals } = readArguments(args, OPTIONS);
    const exercises = new Exercises(values.content);
    const ids = positionals.length > 0 ? positionals : exercises.ids();
    if (values.list) {
      await print(ids.map((id) => madeText(exercises.known(id))).join('\n'));
      return 0;
    }
    const tasks = ids.flatMap((id) => tasksFor(exercises, id, values.full === true));
    const audits = await auditAll(tasks, values.content);
    const rows = ids.map((id) => ({
      id,
      ...sumCounts(audits.filter(({ task }) => task.id === id).map(({ audit }) => audit.counts)),
      references: exercises.get(id)!.definition.references.length,
    }));
    const totals = sumCounts(rows);
    const findings = audits.flatMap(({ audit }) => audit.findings);
    const edition = courseEdition(exercises.ids().map((id) => exercises.get(id)!.edition));
    await print(
      values.json
        ? `${JSON.stringify({ edition, exercises: rows.map(published), totals: published(totals) })}\n`
        : auditText(rows, totals, findings),
    );
    if (values.json && findings.length > 0) process.stderr.write(`${findings.join('\n')}\n`);
    return rows.some(fails) ? 1 : 0;
  },
};

function tasksFor(exercises: Exercises, id: string, full: boolean): AuditTask[] {
  const { definition } = exercises.known(id);
  if (!full) return [{ id, seed: 0, ...QUICK }];
  const count = definition.structures.length;
  const drawnSizes = definition.sizes.map((_, size) => size * count);
  const seeds = new Set([...Array(count).keys(), ...drawnSizes]);
  return [...seeds].map((seed) => ({ id, seed, ...FULL }));
}

async function auditAll(tasks: readonly AuditTask[], contentDir: string | undefined) {
  const audits: { task: AuditTask; audit: VariantAudit }[] = [];
  const url = new URL('../threads/audit.ts', import.meta.url);
  const progress = new Progress(tasks.length, 'variants audited');
  for await (const audit of inOrder<AuditTask, VariantAudit>(url, { contentDir }, tasks)) {
    audits.push({ task: tasks[audits.length]!, audit });
    progress.step();
  }
  progress.end();
  return audits;
}

type Row = Counts & { id: string };

/** Margins are told as findings; what is published are the counts that the design names. */
function published<T extends Counts>({ margins: _margins, ...counts }: T): Omit<T, 'margins'> {
  return counts;
}

function auditText(rows: readonly Row[], totals: Counts, findings: readonly string[]): string {
  const line = (name: string, counts: Counts) =>
    `${name}: ${counts.rightTried} right rigs, ${counts.rightRefused} refused; ${counts.wrongTried} wrong ones, ` +
    `${counts.wrongPassed} passed; ${counts.undecided} undecided; ${counts.diagnosedRight} of ${counts.diagnosed} told ` +
    `what went wrong; ${counts.counterposesSimple} of ${counts.counterposes} counterposes simple`;
  return [...findings, ...rows.map((row) => line(row.id, row)), line('all', totals), ''].join('\n');
}
