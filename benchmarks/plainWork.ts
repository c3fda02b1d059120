import { type Exercise, markingOf } from '../src/grader/index.ts';
import { skinOf } from '../src/grader/measure/skin.ts';
import { modelOf } from '../src/grader/models.ts';
import { fillProbes } from '../src/grader/probe/fill.ts';
import { prove } from '../src/grader/prove.ts';
import type { Work } from '../src/grader/responses/response.ts';
import { type Subject, subjectOf } from '../src/grader/subject.ts';
import { createState, evaluate, skinMesh } from '../src/solver/index.ts';

/** What a proof asks for, done plainly: nothing is measured, looked up or remembered. */
export interface PlainWork {
  /** How many poses the proof asks for, of the rig and of references it is compared with. */
  poses: number;
  run(): void;
}

/**
 * The yardstick of a proof: the rig compiled once, then as many poses as the proof asks of it evaluated one by one, all
 * different; of a reference that it is compared with as many as are asked of that; and the mesh skinned where the proof
 * asks for it, bound once. Null where the rig cannot be evaluated.
 */
export function plainWorkOf(exercise: Exercise, work: Work): PlainWork | null {
  const models = modelsOf(exercise);
  const before = models.map(({ evaluations }) => evaluations);
  const { prepared } = prove(exercise, work);
  if (!prepared.ok) return null;
  const { evaluations, skinnings } = prepared.subject;
  const ofModels = models.map((model, i) => model.evaluations - before[i]!);
  const poses = fillProbes(prepared.subject.inputs, Math.max(evaluations, ...ofModels), 1);
  return {
    poses: ofModels.reduce((sum, count) => sum + count, evaluations),
    run() {
      const built = subjectOf(exercise, work.rig, work.parts);
      if (!built.ok) return;
      evaluateAll(built.subject, poses.slice(0, evaluations), skinnings);
      models.forEach((model, i) => {
        evaluateAll(model, poses.slice(0, ofModels[i]), 0);
      });
    },
  };
}

function evaluateAll(subject: Subject, poses: readonly Float64Array[], skinnings: number): void {
  const { program, packer } = subject;
  const state = createState(program);
  const room = packer.room();
  const skin = skinnings > 0 ? skinOf(subject) : null;
  poses.forEach((pose, n) => {
    packer.pack(pose, room);
    evaluate(program, state, room.packed);
    if (skin && n < skinnings) skinMesh(skin.binding, state.world, skin.skinned);
  });
}

/** The references that requirements of an exercise compare with, as they are once it has been marked. */
function modelsOf(exercise: Exercise): Subject[] {
  markingOf(exercise);
  const named = exercise.requirements.flatMap((one) => (one.kind === 'as-reference' ? [one.reference] : []));
  return [...new Set(named)].map((reference) => modelOf(exercise, reference));
}
