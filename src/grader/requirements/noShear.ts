import { needed } from '../../solver/document/structures.ts';
import { angleBetweenDeg } from '../measure/frame.ts';
import { worldAt, worldOffset } from '../subject.ts';
import type { BehaviourKind } from './kind.ts';
import { type RequirementBase, requirementReader, spokenList } from './requirement.ts';

export interface NoShear extends RequirementBase {
  kind: 'no-shear';
  bones: readonly string[];
}

/** How far the axes of the worst bone are from square to one another, degrees. */
export const noShear: BehaviourKind<NoShear> = {
  kind: 'no-shear',
  about: 'behaviour',
  read: requirementReader<NoShear>('no-shear', { bones: needed(spokenList) }),
  unit: () => 'degrees',
  bones: ({ bones }) => bones,
  inputs: () => [],
  missed: ({ bones }, { measured, allowed, nameOf }) =>
    `Of ${bones.map(nameOf).join(' and ')} one is sheared: its axes are ${measured} out of square; ${allowed} is allowed.`,
  meter({ bones }, subject) {
    const offsets = bones.map((bone) => worldOffset(subject, bone));
    return (values) => {
      const world = worldAt(subject, values);
      return Math.max(...offsets.map((offset) => outOfSquare(world, offset)));
    };
  },
};

function outOfSquare(world: Float64Array, offset: number): number {
  const column = (i: number) => world.subarray(offset + 3 * i, offset + 3 * i + 3);
  const off = (i: number, j: number) => {
    const [a, b] = [column(i), column(j)];
    const isZero = (v: Float64Array) => v.every((x) => x === 0);
    return isZero(a) || isZero(b) ? 0 : Math.abs(90 - angleBetweenDeg(a, b));
  };
  return Math.max(off(0, 1), off(1, 2), off(0, 2));
}
