/** What a node does when its turn comes: an operation and one record of it. */
export interface Step {
  readonly op: number;
  readonly record: readonly number[];
}

/** Runs of one operation each, in an order in which every node comes after what it needs. */
export type Schedule = { ok: true; runs: StepRun[] } | { ok: false; isOrdered: (node: number) => boolean };
export interface StepRun {
  readonly op: number;
  readonly nodes: number[];
}

/**
 * Orders the nodes (A. B. Kahn, Topological sorting of large networks, 1962) so that as many as can of one operation
 * come together: one dispatch then serves them all. Nodes without a step only pass the order on.
 */
export function schedule(needs: readonly (readonly number[])[], steps: readonly (Step | null)[]): Schedule {
  const { waiting, servesFrom, serves } = invert(needs);
  const ready = new Map<number, number[]>();
  const runs: StepRun[] = [];
  const ordered = new Uint8Array(needs.length);
  let passing: number[] = [];

  const offer = (node: number) => {
    const step = steps[node];
    if (!step) passing.push(node);
    else bucket(ready, step.op).push(node);
  };
  const finish = (node: number) => {
    ordered[node] = 1;
    for (let i = servesFrom[node]; i < servesFrom[node + 1]; i++) if (--waiting[serves[i]] === 0) offer(serves[i]);
  };
  const pass = () => {
    while (passing.length > 0) {
      const nodes = passing;
      passing = [];
      nodes.forEach(finish);
    }
  };

  waiting.forEach((count, node) => {
    if (count === 0) offer(node);
  });
  for (pass(); ; ) {
    const op = lowest(ready);
    if (op === undefined) break;
    const nodes = ready.get(op)!;
    for (const node of nodes) {
      finish(node);
      pass();
    }
    ready.delete(op);
    runs.push({ op, nodes });
  }
  return ordered.includes(0) ? { ok: false, isOrdered: (node) => ordered[node] === 1 } : { ok: true, runs };
}

function bucket(ready: Map<number, number[]>, op: number): number[] {
  const known = ready.get(op);
  if (known) return known;
  const made: number[] = [];
  ready.set(op, made);
  return made;
}

function lowest(ready: ReadonlyMap<number, unknown>): number | undefined {
  let least: number | undefined;
  for (const op of ready.keys()) if (least === undefined || op < least) least = op;
  return least;
}

/** How many each node waits for, and whom it serves: those of node n lie at servesFrom[n] up to servesFrom[n + 1]. */
function invert(needs: readonly (readonly number[])[]) {
  const waiting = Int32Array.from(needs, (own) => own.length);
  const servesFrom = new Int32Array(needs.length + 1);
  for (const own of needs) for (const need of own) servesFrom[need + 1]++;
  for (let node = 0; node < needs.length; node++) servesFrom[node + 1] += servesFrom[node];
  const serves = new Int32Array(servesFrom[needs.length]);
  const filled = servesFrom.slice();
  needs.forEach((own, node) => {
    for (const need of own) serves[filled[need]++] = node;
  });
  return { waiting, servesFrom, serves };
}
