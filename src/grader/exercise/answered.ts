import { reading } from '../../solver/document/reader.ts';
import { truthOf, type ValueAsked } from '../requirements/value.ts';
import { type Gauge, gaugeUnit, readGauge } from '../responses/gauge.ts';
import { responseKindOf, type Work } from '../responses/response.ts';
import type { Exercise } from './exercise.ts';
import type { Slip } from './works.ts';

type Built = Exercise['references'][number] | Exercise['wrongTurns'][number];

/**
 * Where an exercise is not answered by a rig: every reference and wrong turn with what it answers, read as a
 * learner's answer is. A slip answers what it makes of the true numbers; a prediction's only reference is the
 * truth itself.
 */
export function answered(exercise: Exercise): Exercise {
  const kind = responseKindOf(exercise.kind);
  if (!kind) return exercise;
  const withAnswer = <T extends Built>(built: T): T => {
    const response = responseOf(exercise, built);
    return response === undefined ? built : { ...built, ...read(response, built.id) };
  };
  return {
    ...exercise,
    references: exercise.references.map(withAnswer),
    wrongTurns: exercise.wrongTurns.map(withAnswer),
  };

  function read(response: unknown, id: string): Work {
    const work = kind!.read(response, exercise);
    if (work.ok) return work.value;
    const { place, found, expected } = work.refusal;
    throw new Error(`${exercise.id}: the response of ${id}, at "${place}": found ${found}, expected ${expected}`);
  }
}

/** Undefined where the built thing is an edit of the start's rig. */
function responseOf(exercise: Exercise, built: Built): unknown {
  if (exercise.kind === 'predict') return { values: valuesOf(exercise, 'slip' in built ? built.slip : undefined) };
  return built.response;
}

function valuesOf(exercise: Exercise, slip: Slip = {}): Record<string, number> {
  const asked = exercise.requirements.filter((requirement) => requirement.kind === 'value');
  return Object.fromEntries(asked.map((requirement) => [requirement.id, slippedValue(exercise, requirement, slip)]));
}

function slippedValue(exercise: Exercise, asked: ValueAsked, { times = 1, plus = 0, gauge }: Slip): number {
  const measured = gauge
    ? truthOf({ ...asked, gauge: gaugeRead(exercise, gauge) }, exercise)
    : truthOf(asked, exercise);
  return measured * times + plus * (gaugeUnit(asked.gauge) === 'cm' ? exercise.size : 1);
}

function gaugeRead({ id }: Exercise, gauge: unknown): Gauge {
  const read = reading(() => readGauge(gauge, null));
  if (read.ok) return read.value;
  const { place, found, expected } = read.refusal;
  throw new Error(`${id}: the gauge of a slip, at "${place}": found ${found}, expected ${expected}`);
}
