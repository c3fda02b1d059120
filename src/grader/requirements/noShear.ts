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
    const columns = [new Float64Array(3), new Float64Array(3), new Float64Array(3)] as const;
    return (values) => {
      const world = worldAt(subject, values);
      let worst = 0;
      for (const offset of offsets) worst = Math.max(worst, outOfSquare(world, offset, columns));
      return worst;
    };
  },
};

type Columns = readonly [Float64Array, Float64Array, Float64Array];

function outOfSquare(world: Float64Array, offset: number, columns: Columns): number {
  for (let i = 0; i < 9; i++) columns[Math.floor(i / 3)]![i % 3] = world[offset + i]!;
  const [x, y, z] = columns;
  return Math.max(offSquare(x, y), offSquare(y, z), offSquare(x, z));
}

function offSquare(a: Float64Array, b: Float64Array): number {
  return isZero(a) || isZero(b) ? 0 : Math.abs(90 - angleBetweenDeg(a, b));
}

const isZero = (v: Float64Array): boolean => v[0] === 0 && v[1] === 0 && v[2] === 0;
