import type { Bone, Vec3 } from '../../solver/document/rig.ts';
import type { Solved } from '../pose/solved.ts';
import { numberText } from '../sentence/piece.ts';
import { boneFigure } from './boneFigure.ts';
import type { Drawing, Figure, Label, Tone } from './drawing.ts';
import { frameAt, pointOf } from './frame.ts';
import { type Manner, ROLE_TONES } from './manner.ts';
import { lengthOf } from './vector.ts';

interface How {
  readonly pixel: number;
  readonly size: number;
  readonly chosen: string | null;
}

/** Every bone of an evaluated rig, with its name; guides with their length. */
export function rigDrawing({ rig, world }: Solved, how: How): Drawing {
  const figures: Figure[] = [];
  const labels: Label[] = [];
  for (const [i, bone] of rig.bones.entries()) {
    const frame = frameAt(world, i);
    const chosen = bone.name === how.chosen;
    figures.push(boneFigure(bone, frame, { ...how, chosen }));
    const along = bone.role === 'control' ? 0 : bone.rest.length * 0.5;
    labels.push({
      at: pointOf(frame, 0, 0, along),
      of: bone.name,
      text: bone.role === 'guide' ? `${bone.name} ${lengthText(bone, frame.z)}` : bone.name,
      tone: ROLE_TONES[bone.role],
      rank: chosen ? 10 : RANKS[bone.role],
    });
  }
  return { figures, labels };
}

/** Some bones where they should be, in fine dashes over the rig as it is. */
export function ghostDrawing(
  { rig, world }: Solved,
  bones: readonly string[],
  how: Manner & { ghost: Tone; says: string },
): Drawing {
  const figures: Figure[] = [];
  const labels: Label[] = [];
  for (const [i, bone] of rig.bones.entries()) {
    if (!bones.includes(bone.name)) continue;
    const frame = frameAt(world, i);
    figures.push(boneFigure(bone, frame, how));
    labels.push({ at: pointOf(frame, 0, 0, bone.rest.length), text: how.says, tone: how.ghost, rank: 9 });
  }
  return { figures, labels };
}

export function joined(...drawings: readonly Drawing[]): Drawing {
  return {
    figures: drawings.flatMap((drawing) => drawing.figures),
    labels: drawings.flatMap((drawing) => drawing.labels),
  };
}

const RANKS = { control: 4, skin: 3, guide: 3, helper: 2 } as const;

function lengthText(bone: Bone, z: Vec3): string {
  return `${numberText(Number((lengthOf(z) * bone.rest.length).toFixed(3)))} m`;
}
