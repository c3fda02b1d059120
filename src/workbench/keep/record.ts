import type { Reading } from '../../solver/document/refusal.ts';
import { readRig } from '../../solver/index.ts';
import type { Draft } from '../edit/draft.ts';
import type { Step } from '../state/history.ts';
import type { Session } from '../state/session.ts';

/** The form of what is kept in the browser; a change of form needs a step in `migrated`. */
export const SCHEMA = 1;

/** One exercise of one seed, without the document and its steps, which stand in stores of their own. */
export interface KeptWork extends Omit<Session, 'history' | 'refused' | 'said'> {
  readonly key: string;
  readonly schema: number;
  /** Goes up by one with every save of the work: a save on top of a revision it has not seen is refused. */
  readonly revision: number;
  readonly edition: string;
  /** Steps done, of all that are kept. */
  readonly at: number;
}

export interface Kept {
  readonly work: KeptWork;
  readonly draft: Draft;
  readonly steps: readonly Step[];
}

/** Kinds that redraw keep all their drawings in one place, the others each variant in its own. */
export function workKey(exercise: string, seed: number | 'drawn'): string {
  return `${exercise}/${seed}`;
}

export function packed(session: Session, about: { key: string; edition: string; revision: number }): KeptWork {
  const { history, refused: _refused, said: _said, ...rest } = session;
  return { ...rest, ...about, schema: SCHEMA, at: history.at };
}

/** The session as it was left, or why what was kept cannot be used. */
export function unpacked(kept: Kept): Reading<Session> {
  const read = readRig(kept.draft.rig);
  if (!read.ok) return { ok: false, refusal: { ...read.refusal, place: `/rig${read.refusal.place}` } };
  const { key: _key, schema: _schema, revision: _revision, edition: _edition, at, ...rest } = kept.work;
  const history = { document: kept.draft, steps: kept.steps, at: Math.min(at, kept.steps.length) };
  return { ok: true, value: { ...rest, history, refused: null, said: '' } };
}

/** Brings what an earlier version kept to the present form; what a later one kept is refused and left alone. */
export function migrated(kept: Kept): Reading<Kept> {
  const { schema } = kept.work;
  if (schema === SCHEMA) return { ok: true, value: kept };
  const found = Number.isInteger(schema) ? `form ${schema}` : 'no form';
  return { ok: false, refusal: { place: '/schema', found, expected: `form ${SCHEMA} or earlier` } };
}
