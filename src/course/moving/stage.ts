import { compile, createState, evaluate, packPose } from '../../solver/index.ts';
import { WORLD_STRIDE } from '../../solver/program.ts';
import { type DrawnBone, drawBones } from './draw-bones.ts';
import { type PlateData, printed, type Reading } from './plate.ts';
import { poseAt } from './pose.ts';

/** A plate at given values of its inputs. */
export interface Shown {
  bones: DrawnBone[];
  /** One for each reading: "3.900 m". */
  readings: string[];
}

/**
 * Compiles the plate's rig; the answer shows it for any values of the inputs (in their order).
 * Throws where the rig has a cycle.
 */
export function stage(data: PlateData): (values: readonly number[]) => Shown {
  const compiled = compile(data.rig);
  if (!compiled.ok) throw new Error(`The plate's rig has a cycle: ${compiled.cycle.join(' → ')}`);
  const { program } = compiled;
  const state = createState(program);
  const pose = new Float64Array(program.poseLength);
  return (values) => {
    packPose(program, poseAt(data.inputs, values), pose);
    evaluate(program, state, pose);
    return {
      bones: drawBones(data, state.world),
      readings: data.readings.map((reading) => `${printed(read(data, state.world, reading), 0.001)} m`),
    };
  };
}

function read({ rig }: PlateData, world: Float64Array, { bone, at = 0, along }: Reading): number {
  const index = rig.bones.findIndex(({ name }) => name === bone);
  if (index < 0) throw new Error(`A reading speaks of ${bone}, which is no bone of the plate's rig.`);
  const row = 'xyz'.indexOf(along);
  const offset = index * WORLD_STRIDE;
  return world[offset + 9 + row]! + world[offset + 6 + row]! * at * rig.bones[index]!.rest.length;
}
