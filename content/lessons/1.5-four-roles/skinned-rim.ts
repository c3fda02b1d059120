import {
  bindMesh,
  compile,
  createState,
  evaluate,
  type Pose,
  packPose,
  readRig,
  skinMesh,
} from '../../../src/solver/index.ts';

/**
 * The points of a rig's mesh in a pose, seen from the side: [z, y] in drawing units, `scale` of them a metre, moved by
 * `shift`. Throws where the rig is refused, has no mesh or has a cycle.
 */
export function skinnedRim(document: unknown, pose: Pose, scale: number, shift: readonly [number, number]) {
  const reading = readRig(document);
  if (!reading.ok) throw new Error(`a rig that is refused at "${reading.refusal.place}"`);
  const compiled = compile(reading.value);
  const binding = bindMesh(reading.value);
  if (!compiled.ok || !binding) throw new Error('a rig with a cycle or without a mesh');
  const state = createState(compiled.program);
  evaluate(compiled.program, state, packPose(compiled.program, pose));
  const points = new Float64Array(reading.value.mesh!.positions.length);
  skinMesh(binding, state.world, points);
  return Array.from({ length: points.length / 3 }, (_, i): readonly [number, number] => [
    shift[0] + scale * points[3 * i + 2]!,
    shift[1] + scale * points[3 * i + 1]!,
  ]);
}
