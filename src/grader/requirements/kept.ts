import type { Bone } from '../../solver/document/rig.ts';
import type { StructureKind } from './kind.ts';
import { linkMeant } from './linkMeant.ts';
import { type RequirementBase, requirementReader } from './requirement.ts';

export interface KeptAsGiven extends RequirementBase {
  kind: 'kept';
}

/** Fields of given bones that are no longer as they were in the start; their count. */
export const kept: StructureKind<KeptAsGiven> = {
  kind: 'kept',
  about: 'structure',
  read: requirementReader<KeptAsGiven>('kept', {}),
  unit: () => 'fields',
  bones: () => [],
  inputs: () => [],
  missed: (_, { places }) => `What was given should stay as it was: ${places.map(placeWords).join(', ')}.`,
  inspect(_, { exercise, rig }) {
    const built = new Map(rig.bones.map((bone) => [bone.name, bone]));
    const given = new Map(exercise.start.bones.map((bone) => [bone.name, bone]));
    const places = exercise.kept.flatMap(({ bone, fields }) => changes(given.get(bone)!, built.get(bone), fields));
    return { measured: places.length, places };
  },
};

/** A place as its sentence on the page has it. */
function placeWords(place: string): string {
  const [field, bone] = place.split(' of ');
  if (field === 'inherits') return `what ${bone} takes of its parent`;
  return place.replace(/^attach /, 'attachment ').replace(/^turnOrder /, 'turn order ');
}

function changes(given: Bone, built: Bone | undefined, fields: readonly string[]): string[] {
  if (!built) return [`${given.name} is gone`];
  return fields.filter((field) => !stays(given, built, field)).map((field) => `${field} of ${given.name}`);
}

const DEFAULTS: Readonly<Record<string, unknown>> = { attach: 'free', inherits: 'all', turnOrder: 'xyz' };
const OPEN = [false, false, false] as const;

/** Links and switches of the start must still stand as they were; new ones beside them are free. */
function stays(given: Bone, built: Bone, field: string): boolean {
  if (field === 'links' || field === 'switches') {
    const now = namedOf(built, field);
    return namedOf(given, field).every((old) =>
      alike(
        old,
        now.find(({ name }) => name === old.name),
      ),
    );
  }
  return alike(fieldOf(given, field), fieldOf(built, field));
}

function namedOf(bone: Bone, field: 'links' | 'switches'): readonly { name: string }[] {
  if (field === 'links') return (bone.links ?? []).map(linkMeant);
  return (bone.switches ?? []).map((own) => ({ sliding: false, ...own }));
}

function fieldOf(bone: Bone, field: string): unknown {
  if (field === 'locks') return { move: OPEN, turn: OPEN, size: OPEN, ...bone.locks };
  return bone[field as keyof Bone] ?? DEFAULTS[field];
}

/** Numbers may differ by a written-out rounding, 1e-9; nothing else may. */
function alike(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= 1e-9;
  if (a === null || b === null || typeof a !== 'object' || typeof b !== 'object') return a === b;
  return hasAlike(a, b) && Object.keys(b).every((key) => Object.hasOwn(a, key) || b[key as keyof object] === undefined);
}

/** Whether all that the one has is alike in the other. */
function hasAlike(a: object, b: object): boolean {
  return Object.keys(a).every((key) => alike(a[key as keyof object], b[key as keyof object]));
}
