/** The oracle's public face: a rig and a pose to the result that rig.md describes. */
import type { Pose, Rig } from '../../src/solver/document/rig.ts';
import { FLAGS, type Flag, type SolveResult } from '../../src/solver/program.ts';
import { driverValue, switchValue, weightOf } from './controls.ts';
import { Evaluation, flagKey } from './evaluation.ts';
import { driversOf, linksOf } from './names.ts';
import { worldOf } from './stages.ts';
import type { World } from './world.ts';

/** The rig must be readable and without a cycle, the pose within the switches' ranges. */
export const oracleSolve = (rig: Rig, pose: Pose): SolveResult => resultOf(new Evaluation(rig, pose));

/** Asks an evaluation for all that a result holds. */
export function resultOf(evaluation: Evaluation): SolveResult {
  const { rig } = evaluation;
  for (const driver of driversOf(rig)) driverValue(evaluation, driver);
  const bones: SolveResult['bones'] = Object.create(null);
  const weights: SolveResult['weights'] = Object.create(null);
  for (const bone of rig.bones) {
    bones[bone.name] = { matrix: columnMajor(worldOf(evaluation, bone.name)) };
    for (const { name } of bone.switches ?? []) switchValue(evaluation, `${bone.name}.${name}`);
    for (const link of linksOf(bone)) weights[`${bone.name}.${link.name}`] = weightOf(evaluation, bone, link);
  }
  return { bones, weights, flags: inDocumentOrder(rig, evaluation.raised) };
}

const columnMajor = ({ a, base }: World): number[] => [...a.x, 0, ...a.y, 0, ...a.z, 0, ...base, 1];

/** Bones as they stand; within a bone its switches before its links; on one link in the order of FLAGS. */
function inDocumentOrder(rig: Rig, raised: ReadonlySet<string>): Flag[] {
  const places = rig.bones.flatMap((bone) =>
    [null, ...linksOf(bone).map((link) => link.name)].map((link) => [bone.name, link] as const),
  );
  const all = places.flatMap(([bone, link]) => FLAGS.map((flag) => ({ flag, bone, link })));
  return all.filter(({ flag, bone, link }) => raised.has(flagKey(flag, bone, link)));
}
