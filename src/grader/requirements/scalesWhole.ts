import { needed, optional } from '../../solver/document/structures.ts';
import { POSE_STRIDE } from '../../solver/program.ts';
import { worldAt, worldOffset, worldOfPacked } from '../subject.ts';
import type { BehaviourKind } from './kind.ts';
import { positive, type RequirementBase, requirementReader, spoken, spokenList } from './requirement.ts';

export interface ScalesWhole extends RequirementBase {
  kind: 'scales-whole';
  bones: readonly string[];
  /** The bone that carries the whole rig, whose size is changed. */
  root: string;
  /** Default 2. */
  factor?: number;
}

/**
 * How far the base and axes' ends of the worst bone are from where they should be with the root at
 * `factor` times its size: at `factor` times their place from the root's base. Millimetres at size 1.
 */
export const scalesWhole: BehaviourKind<ScalesWhole> = {
  kind: 'scales-whole',
  about: 'behaviour',
  read: requirementReader<ScalesWhole>('scales-whole', {
    bones: needed(spokenList),
    root: needed(spoken),
    factor: optional(positive),
  }),
  unit: () => 'mm',
  bones: ({ bones, root }) => [...bones, root],
  inputs: () => [],
  missed: ({ bones }, { measured, allowed, nameOf }) =>
    `With the rig at another size, one of ${bones.map(nameOf).join(' and ')} is ${measured} from where it should be; ${allowed} is allowed.`,
  meter({ bones, root, factor = 2 }, subject) {
    const rootAt = worldOffset(subject, root);
    const offsets = bones.map((bone) => worldOffset(subject, bone));
    const sizeAt = (rootAt / 12) * POSE_STRIDE + 7;
    const room = subject.packer.room();
    const scaled = new Float64Array(room.packed.length);
    return (values) => {
      const before = worldAt(subject, values);
      subject.packer.pack(values, room);
      scaled.set(room.packed);
      for (let i = 0; i < 3; i++) scaled[sizeAt + i] = scaled[sizeAt + i]! * factor;
      const after = worldOfPacked(subject, scaled);
      let worst = 0;
      for (const offset of offsets) worst = Math.max(worst, apart(before, after, offset));
      return 1000 * worst;
    };

    /** Largest difference of the bone's columns, over its length, and of its base, both brought back to size 1. */
    function apart(before: Float64Array, after: Float64Array, offset: number): number {
      const length = subject.rig.bones[offset / 12]!.rest.length;
      let worst = 0;
      for (let i = 0; i < 12; i++) {
        const k = i % 3;
        const isBase = i >= 9;
        const was = isBase ? before[offset + i]! - before[rootAt + 9 + k]! : before[offset + i]! * length;
        const is = isBase ? after[offset + i]! - after[rootAt + 9 + k]! : after[offset + i]! * length;
        worst = Math.max(worst, Math.abs(is / factor - was));
      }
      return worst;
    }
  },
};
