import { bindParts } from '../../grader/bind.ts';
import type { Part } from '../../grader/exercise/definition.ts';
import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { Bone } from '../../solver/document/rig.ts';
import type { Draft } from '../edit/draft.ts';

export interface Group {
  readonly title: string;
  readonly bones: readonly { bone: Bone; serves: readonly string[] }[];
}

/** The bones of the mechanism, gathered by what they serve: asked for by the task, given, made besides. */
export function groupsOf(draft: Draft, exercise: Pick<Exercise, 'parts' | 'start'>): Group[] {
  const given = new Set(exercise.start.bones.map((bone) => bone.name));
  const rows = draft.rig.bones.map((bone) => ({ bone, serves: servesOf(draft, exercise.parts, bone.name) }));
  const asked = rows.filter(({ bone, serves }) => serves.length > 0 && !given.has(bone.name));
  const other = rows.filter((row) => !asked.includes(row));
  const groups: Group[] = [
    { title: 'What the task asks for', bones: asked },
    { title: 'Made besides', bones: other.filter(({ bone }) => !given.has(bone.name)) },
    { title: 'Given', bones: other.filter(({ bone }) => given.has(bone.name)) },
  ];
  return groups.filter(({ bones }) => bones.length > 0);
}

/** The bone or switch that stands for a part: the chosen one, else the one the task names; '' where there is none. */
export function boundTo(draft: Draft, part: Part): string {
  return bindParts([part], draft.rig, draft.parts).get(part.id) ?? '';
}

function servesOf(draft: Draft, parts: readonly Part[], bone: string): string[] {
  return parts
    .filter((part) => {
      const bound = boundTo(draft, part);
      return part.is === 'bone' ? bound === bone : bound.startsWith(`${bone}.`);
    })
    .map((part) => part.says);
}
