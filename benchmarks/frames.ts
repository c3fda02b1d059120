/** One event of a browser's trace, times in microseconds; `tdur` is what the thread itself ran, without its waiting. */
export interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly pid: number;
  readonly tid: number;
  readonly args?: { readonly data?: { readonly type?: string } };
}

const SCRIPTS = 'scripts, with what they ask of WebGL';
const STYLE = 'style and layout';
const PAINT = 'paint: what to draw, not the drawing of it';
const REST = 'the rest: input, scheduling, the trace itself';
const ALL = 'all that the main thread ran';
const CLOCK = 'the same by the clock, with its waiting';
export const FRAME_PARTS = [SCRIPTS, STYLE, PAINT, REST, ALL, CLOCK] as const;
/** Milliseconds. */
export type Frame = Readonly<Record<(typeof FRAME_PARTS)[number], number>>;

const NAMES = [
  [
    SCRIPTS,
    ['EventDispatch', 'FunctionCall', 'FireAnimationFrame', 'RunMicrotasks', 'TimerFire', 'MinorGC', 'MajorGC'],
  ],
  [STYLE, ['UpdateLayoutTree', 'Layout']],
  [PAINT, ['PrePaint', 'Paint', 'UpdateLayer', 'Layerize', 'Commit']],
] as const;

/** The frames of a drag: each from the task that a move of the pointer is in to that of the next one. */
export function framesOf(events: readonly TraceEvent[]): Frame[] {
  const moves = events.filter(({ name, args }) => name === 'EventDispatch' && args?.data?.type === 'pointermove');
  const [first] = moves;
  if (!first) throw new Error('The trace has no move of the pointer.');
  const own = events
    .filter(({ ph, pid, tid, dur }) => ph === 'X' && pid === first.pid && tid === first.tid && dur !== undefined)
    .toSorted((a, b) => a.ts - b.ts || b.dur! - a.dur!);
  const tasks = outermost(own.filter(({ name }) => name === 'RunTask'));
  const parts = NAMES.map(([part, names]) => [part, outermost(own.filter(isNamed(names)))] as const);
  const starts = moves.map(({ ts }) => tasks.findLast((task) => task.ts <= ts)?.ts ?? ts);
  return starts.slice(0, -1).map((from, i) => {
    const to = starts[i + 1]!;
    const all = sum(within(tasks, from, to), (task) => task.tdur ?? task.dur!);
    const told = parts.map(
      ([part, list]) => [part, sum(within(list, from, to), (each) => each.tdur ?? each.dur!)] as const,
    );
    return {
      ...(Object.fromEntries(told) as Frame),
      [REST]: all - told.reduce((total, [, part]) => total + part, 0),
      [ALL]: all,
      [CLOCK]: sum(within(tasks, from, to), ({ dur }) => dur!),
    };
  });
}

function isNamed(names: readonly string[]): (event: TraceEvent) => boolean {
  return ({ name }) => names.includes(name);
}

function within(list: readonly TraceEvent[], from: number, to: number): TraceEvent[] {
  return list.filter(({ ts }) => ts >= from && ts < to);
}

/** Milliseconds of microseconds. */
function sum(list: readonly TraceEvent[], of: (event: TraceEvent) => number): number {
  return list.reduce((total, event) => total + of(event), 0) / 1000;
}

/** Those that do not lie within another one. */
function outermost(sorted: readonly TraceEvent[]): TraceEvent[] {
  let end = Number.NEGATIVE_INFINITY;
  return sorted.filter(({ ts, dur }) => {
    if (ts < end) return false;
    end = ts + dur!;
    return true;
  });
}
