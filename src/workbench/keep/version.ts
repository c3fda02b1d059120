import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { Pose } from '../../solver/document/rig.ts';
import { answeredBy } from '../answer/kinds.ts';
import type { Draft } from '../edit/draft.ts';
import { isBuiltOnFile } from '../edit/openDraft.ts';
import { stampOf } from '../proof/record.ts';
import { difference } from '../state/patch.ts';
import { draftOf, type Session } from '../state/session.ts';

/** What is answered at one moment: a rig, and the pose where that is the answer. */
export interface Content {
  readonly draft: Draft;
  readonly pose?: Pose;
}

/** What a proof said of a version. */
export interface VersionProof {
  readonly mark: number;
  readonly passed: boolean;
}

/** An answer kept under a name, before the database has numbered it. */
export interface NewVersion extends Content {
  /** The key of the work that it is a version of. */
  readonly work: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly when: number;
  readonly edition: string;
  /** Whether it was built on what a file held. */
  readonly fromFile: boolean;
  /** Null where no proof of it is known. */
  readonly proof: VersionProof | null;
}
export interface KeptVersion extends NewVersion {
  readonly id: number;
}

export const NAME_MAX = 60;

export function contentOf(session: Session, exercise: Pick<Exercise, 'kind'>): Content {
  const draft = draftOf(session);
  return answeredBy(exercise) === 'pose' ? { draft, pose: session.pose } : { draft };
}

export function isSameContent(a: Content, b: Content): boolean {
  return difference({ draft: a.draft, pose: a.pose }, { draft: b.draft, pose: b.pose }).length === 0;
}

/** What the last proof said, where it was of just what stands. */
export function proofNow(session: Session, exercise: Pick<Exercise, 'kind'>): VersionProof | null {
  const proof = session.proofs.at(-1);
  if (proof?.stamp !== stampOf(session, exercise)) return null;
  return { mark: proof.result.mark, passed: proof.result.passed };
}

/** The answer as it stands, as a version of that name. */
export function versionOf(
  session: Session,
  exercise: Pick<Exercise, 'kind' | 'edition'>,
  about: { work: string; name: string; when: number },
): NewVersion {
  return {
    ...about,
    ...contentOf(session, exercise),
    edition: exercise.edition,
    fromFile: isBuiltOnFile(session.history),
    proof: proofNow(session, exercise),
  };
}

/** "proved, mark 100 %" */
export function proofWords(proof: VersionProof | null): string {
  if (!proof) return 'no proof made';
  return `${proof.passed ? 'proved' : 'not proved'}, mark ${Math.round(proof.mark * 100)} %`;
}

/** The name, or the same with a number where it is taken. */
export function namedApart(name: string, taken: readonly string[]): string {
  let apart = name.slice(0, NAME_MAX);
  for (let n = 2; taken.includes(apart); n++) apart = `${name.slice(0, NAME_MAX - 5)} (${n})`;
  return apart;
}

/** "version 3" after two others. */
export function nextName(taken: readonly string[]): string {
  let n = taken.length + 1;
  while (taken.includes(`version ${n}`)) n++;
  return `version ${n}`;
}
