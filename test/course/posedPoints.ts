import {
  bindMesh,
  compile,
  createState,
  evaluate,
  type Pose,
  packPose,
  type Rig,
  skinMesh,
} from '../../src/solver/index.ts';

/** The points of a rig's mesh in a pose: x, y, z of each in turn, metres, rig space. Throws on a cycle or without a mesh. */
export function posedPoints(rig: Rig, pose: Pose): Float64Array {
  const compiled = compile(rig);
  const binding = bindMesh(rig);
  if (!compiled.ok || !binding) throw new Error('a rig with a cycle or without a mesh');
  const state = createState(compiled.program);
  evaluate(compiled.program, state, packPose(compiled.program, pose));
  const points = new Float64Array(rig.mesh!.positions.length);
  skinMesh(binding, state.world, points);
  return points;
}
