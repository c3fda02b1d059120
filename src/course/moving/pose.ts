import type { BonePose, Pose } from '../../solver/document/rig.ts';
import type { PlateInput } from './plate.ts';

/** The pose that the inputs make at these values, in their order. What none of them moves stays at rest. */
export function poseAt(inputs: readonly PlateInput[], values: readonly number[]): Pose {
  const bones: Record<string, BonePose> = {};
  const switches: Record<string, number> = {};
  inputs.forEach((input, index) => {
    const value = values[index]!;
    if ('switch' in input) {
      switches[input.switch] = value;
      return;
    }
    bones[input.bone] = withChannel(bones[input.bone] ?? {}, input.channel, value);
  });
  return { bones, switches };
}

function withChannel(pose: BonePose, channel: string, value: number): BonePose {
  const place = 'xyz'.indexOf(channel.at(-1)!);
  if (channel.startsWith('move')) return { ...pose, move: replaced(pose.move ?? [0, 0, 0], place, value) };
  const angles = pose.turn && 'angles' in pose.turn ? pose.turn.angles : ([0, 0, 0] as const);
  return { ...pose, turn: { angles: replaced(angles, place, value) } };
}

function replaced(triple: readonly [number, number, number], place: number, value: number) {
  const copy: [number, number, number] = [...triple];
  copy[place] = value;
  return copy;
}
