import { type Reader, readAt } from '../../solver/document/reader.ts';
import { fieldOf } from '../../solver/document/structures.ts';
import { oneOf } from '../../solver/document/values.ts';
import { type AimsAt, aimsAt } from './aimsAt.ts';
import { type AnswersTo, answersTo } from './answersTo.ts';
import { type AsReference, asReference } from './asReference.ts';
import { type Evaluates, evaluates } from './evaluates.ts';
import { type FewChanges, fewChanges } from './fewChanges.ts';
import { type HandsOver, handsOver } from './handsOver.ts';
import { type HoldsStill, holdsStill } from './holdsStill.ts';
import { type InOrder, inOrder } from './inOrder.ts';
import { type KeepsSize, keepsSize } from './keepsSize.ts';
import { type KeepsVolume, keepsVolume } from './keepsVolume.ts';
import { type KeptAsGiven, kept } from './kept.ts';
import type { Kind } from './kind.ts';
import { type LocksAsked, locks } from './locks.ts';
import { type MeetsAt, meetsAt } from './meetsAt.ts';
import { type Mirrors, mirrors } from './mirrors.ts';
import { type MovesWith, movesWith } from './movesWith.ts';
import { type NameAsked, nameAsked } from './nameAsked.ts';
import { type NoJump, noJump } from './noJump.ts';
import { type NoShear, noShear } from './noShear.ts';
import { type PairComplete, pairComplete } from './pairComplete.ts';
import { type ParentAsked, parentAsked } from './parentAsked.ts';
import { type PivotAt, pivotAt } from './pivotAt.ts';
import { type RestUnchanged, restUnchanged } from './restUnchanged.ts';
import { type RoleAsked, role } from './role.ts';
import { type RollWithin, rollWithin } from './rollWithin.ts';
import { type ScalesWhole, scalesWhole } from './scalesWhole.ts';
import { type SkinAsGiven, skinAsGiven } from './skinAsGiven.ts';
import { type SmoothAlongPath, smoothAlongPath } from './smoothAlongPath.ts';
import { type SpansTo, spansTo } from './spansTo.ts';
import { type StaysBetween, staysBetween } from './staysBetween.ts';
import { type StaysWithin, staysWithin } from './staysWithin.ts';
import { type ValueAsked, value } from './value.ts';

export type Requirement =
  | AimsAt
  | AnswersTo
  | HoldsStill
  | HandsOver
  | StaysBetween
  | NoJump
  | MovesWith
  | KeepsSize
  | RestUnchanged
  | RoleAsked
  | KeptAsGiven
  | Evaluates
  | AsReference
  | InOrder
  | KeepsVolume
  | LocksAsked
  | MeetsAt
  | Mirrors
  | NameAsked
  | NoShear
  | PairComplete
  | ParentAsked
  | PivotAt
  | RollWithin
  | ScalesWhole
  | SkinAsGiven
  | SmoothAlongPath
  | FewChanges
  | SpansTo
  | StaysWithin
  | ValueAsked;
export type RequirementKind = Requirement['kind'];

/** Every kind of requirement; a new one is one new file, and its name here. */
const KINDS = [
  aimsAt,
  answersTo,
  holdsStill,
  handsOver,
  staysBetween,
  noJump,
  movesWith,
  keepsSize,
  restUnchanged,
  role,
  kept,
  evaluates,
  asReference,
  inOrder,
  keepsVolume,
  locks,
  meetsAt,
  mirrors,
  nameAsked,
  noShear,
  pairComplete,
  parentAsked,
  pivotAt,
  rollWithin,
  scalesWhole,
  skinAsGiven,
  smoothAlongPath,
  fewChanges,
  spansTo,
  staysWithin,
  value,
];

const byName = new Map<string, Kind<Requirement>>(
  KINDS.map((kind) => [kind.kind, kind as unknown as Kind<Requirement>]),
);

export function kindOf(requirement: Requirement): Kind<Requirement> {
  return byName.get(requirement.kind)!;
}

const kindName = oneOf([...byName.keys()]);

/** Reads a requirement of any kind. */
export const readRequirement: Reader<Requirement> = (value, known) => {
  const name = readAt('kind', kindName, fieldOf(value, 'kind'), known);
  return byName.get(name)!.read(value, known);
};
