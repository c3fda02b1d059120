import type { Requirement, RequirementKind } from '../exercise/definition.ts';
import { aimsAt } from './aims-at.ts';
import { answersTo } from './answers-to.ts';
import { evaluates } from './evaluates.ts';
import { handsOver } from './hands-over.ts';
import { holdsStill } from './holds-still.ts';
import { kept } from './kept.ts';
import type { Kind } from './kind.ts';
import { restUnchanged } from './rest-unchanged.ts';
import { role } from './role.ts';
import { staysBetween } from './stays-between.ts';

/** Every kind of requirement; a new one is one new file and one entry here. */
const KINDS = [aimsAt, answersTo, holdsStill, handsOver, staysBetween, restUnchanged, role, kept, evaluates];

const byKind = new Map<RequirementKind, Kind>(KINDS.map((kind) => [kind.kind, kind as unknown as Kind]));

export function kindOf(requirement: Requirement): Kind {
  return byKind.get(requirement.kind)!;
}
