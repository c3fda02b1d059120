import type { Rig } from '../../solver/document/rig.ts';
import { boneOf } from '../bind.ts';
import type { Exercise } from '../exercise/exercise.ts';
import { moveBetweenMm, turnBetweenDeg } from '../measure/frame.ts';
import { acrossOf } from '../probe/across.ts';
import { randomOf } from '../random.ts';
import { type Subject, worldAt } from '../subject.ts';
import { anyValue } from './anyValue.ts';

const POSES = 60;
/** Below these nobody sees a difference: common practice, no source. */
const SEEN_MM = 0.1;
const SEEN_DEG = 0.1;

/** What an animator sees of a rig: where the exercise's bones go in some random poses, what is skinned, what is locked. */
export interface Seen {
  worlds: Float64Array[];
  lengths: number[];
  skin: string;
  locks: string;
}

export function seenOf(subject: Subject): Seen {
  const { exercise, rig } = subject;
  const offsets = spokenBones(exercise).map((name) => offsetOf(subject, name));
  const random = randomOf(11);
  const seen = (world: Float64Array) =>
    Float64Array.from(offsets.flatMap((at) => Array.from({ length: 12 }, (_, i) => (at < 0 ? 0 : world[at + i]!))));
  // Where an answer is asked to mirror, its mirrored poses are seen too: they move bones that no input moves.
  const isMirrored = exercise.requirements.some(({ kind }) => kind === 'mirrors');
  const across = isMirrored ? acrossOf(subject) : null;
  const worlds = Array.from({ length: POSES }, (_, n) => {
    const values = Float64Array.from(subject.inputs, (input) => (n === 0 ? input.rest : anyValue(input, random)));
    const world = seen(worldAt(subject, values));
    return across ? [world, seen(across.worldAt(values))] : [world];
  }).flat();
  const lengths = offsets.map((at) => (at < 0 ? 0 : rig.bones[at / 12]!.rest.length));
  return { worlds, lengths, skin: skinOf(rig), locks: locksOf(subject) };
}

/** Whether an animator could tell the two apart. */
export function differsVisibly(a: Seen, b: Seen): boolean {
  if (a.skin !== b.skin || a.locks !== b.locks) return true;
  return a.worlds.some((world, n) =>
    a.lengths.some((length, bone) => {
      const [at, other] = [12 * bone, b.worlds[n]!];
      return moveBetweenMm(world, at, other, at, length) > SEEN_MM || turnBetweenDeg(world, at, other, at) > SEEN_DEG;
    }),
  );
}

function spokenBones(exercise: Exercise): string[] {
  const parts = exercise.parts.filter(({ is }) => is === 'bone').map(({ id }) => id);
  return [...new Set([...parts, ...exercise.start.bones.map(({ name }) => name)])];
}

function offsetOf(subject: Subject, spoken: string): number {
  const index = subject.program.boneIndex.get(boneOf(spoken, subject.binding) ?? '');
  return index === undefined ? -1 : 12 * index;
}

/** Which bones pull at the mesh; nothing to see where there is none. */
function skinOf(rig: Rig): string {
  if (!rig.mesh) return '';
  return rig.bones
    .filter(({ role }) => role === 'skin')
    .map(({ rest }) => JSON.stringify(rest))
    .sort()
    .join();
}

function locksOf({ exercise, rig, binding }: Subject): string {
  const names = spokenBones(exercise).map((spoken) => boneOf(spoken, binding));
  return JSON.stringify(names.map((name) => rig.bones.find((bone) => bone.name === name)?.locks ?? null));
}
