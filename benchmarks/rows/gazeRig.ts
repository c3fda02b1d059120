/** The whole gaze rig of lesson 6.1 as its first reference builds it, a pose at a time. */
import { join } from 'node:path';
import { readExerciseFile } from '../../src/course/exercise-files.ts';
import { openExercise } from '../../src/grader/index.ts';
import { type BonePose, createState, evaluate, packPose, type Rig, type Vec3 } from '../../src/solver/index.ts';
import { between, chance, seeded } from '../../test/support/random.ts';
import type { Contest } from '../contest.ts';
import { programOf } from '../rigs/programOf.ts';

const POSES = 64;
const CONTENT = join(import.meta.dirname, '../../content');

export function gazeRig(): Contest {
  const { definition, edition } = readExerciseFile(CONTENT, 'gaze-rig');
  const { rig } = openExercise(definition, { edition, seed: 0 }).references[0]!;
  if (!rig) throw new Error('the first reference has no rig');
  const program = programOf(rig);
  const state = createState(program);
  const poses = posesOf(rig).map((pose) => packPose(program, pose));
  const links = rig.bones.reduce((sum, bone) => sum + (bone.links?.length ?? 0), 0);
  let turn = 0;
  return {
    work: `the gaze rig of 6.1, ${rig.bones.length} bones, ${links} links, ${rig.drivers?.length ?? 0} drivers`,
    unit: 'ns a pose',
    perCall: 1,
    contenders: { ours: () => evaluate(program, state, poses[turn++ % POSES]) },
    perSecond: 'poses',
  };
}

/** Every control moved and turned a little, the switches anywhere or at an end. */
function posesOf(rig: Rig) {
  const random = seeded(61);
  const three = (most: number): Vec3 => [
    between(random, -most, most),
    between(random, -most, most),
    between(random, -most, most),
  ];
  const posed = (): BonePose => ({ move: three(0.05), turn: { angles: three(20) } });
  const controls = rig.bones.filter(({ role }) => role === 'control');
  const switches = rig.bones.flatMap((bone) => (bone.switches ?? []).map((own) => ({ ...own, of: bone.name })));
  return Array.from({ length: POSES }, () => ({
    bones: Object.fromEntries(controls.map(({ name }) => [name, posed()])),
    switches: Object.fromEntries(
      switches.map(({ of, name, min, max }) => [
        `${of}.${name}`,
        chance(random, 0.5) ? min : between(random, min, max),
      ]),
    ),
  }));
}
