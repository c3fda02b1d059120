import type { Exercise } from '../../grader/exercise/exercise.ts';
import { ladder } from '../../grader/probe/ladder.ts';
import { poseOf } from '../../grader/probe/pose.ts';
import { keepOutTest } from '../../grader/probe/probes.ts';
import { subjectOf } from '../../grader/subject.ts';
import type { Pose, Rig } from '../../solver/document/rig.ts';

/** The canonical probes of a rig as poses, without those that are kept out; none where it cannot be evaluated. */
export function probePoses(exercise: Exercise, rig: Rig, parts: Readonly<Record<string, string>>): Pose[] {
  const prepared = subjectOf(exercise, rig, parts);
  if (!prepared.ok) return [];
  const { subject } = prepared;
  const isOut = keepOutTest(subject);
  const poses = ladder(subject.inputs).flatMap((values) => (isOut?.(values) ? [] : [poseOf(subject, values)]));
  return [...new Map(poses.map((pose) => [JSON.stringify(pose), pose])).values()];
}
