import { expect, test } from 'vitest';
import { anyValue } from '../../src/grader/audit/anyValue.ts';
import { randomOf } from '../../src/grader/random.ts';
import { subjectOf, worldAt } from '../../src/grader/subject.ts';
import { createState, evaluate } from '../../src/solver/index.ts';
import { exerciseFor } from '../support/exercises.ts';

test('a pose that is remembered has the bits of one that is evaluated anew, whatever was asked in between', () => {
  const exercise = exerciseFor('let-go');
  const prepared = subjectOf(exercise, exercise.references[0]!.rig);
  if (!prepared.ok) throw new Error('a reference evaluates');
  const { subject } = prepared;
  const { program, inputs, packer } = subject;
  const random = randomOf(7);
  const poses = Array.from({ length: 12 }, () => Float64Array.from(inputs, (input) => anyValue(input, random)));
  const anew = poses.map((values) => {
    const state = createState(program);
    const room = packer.room();
    packer.pack(values, room);
    evaluate(program, state, room.packed);
    return [...state.world];
  });
  for (let n = 0; n < 500; n++) {
    const which = Math.floor(random() * (n % 2 === 0 ? 4 : poses.length));
    expect([...worldAt(subject, poses[which]!)]).toEqual(anew[which]);
  }
});
