import { kindOf } from '../requirements/table.ts';
import type { Exercise } from './exercise.ts';

type Crossed = Pick<
  Exercise,
  'id' | 'start' | 'kept' | 'parts' | 'inputs' | 'keepOut' | 'requirements' | 'references' | 'wrongTurns' | 'hints'
>;

/** Throws, naming the place, where something in an exercise speaks of what is not there, or two share an id. */
export function crossCheck(exercise: Crossed): void {
  const ids = (items: readonly { id: string }[]) => items.map(({ id }) => id);
  const parts = ids(exercise.parts);
  const inputs = ids(exercise.inputs);
  const requirements = ids(exercise.requirements);
  const bones = exercise.start.bones.map(({ name }) => name);
  const spoken = [...parts, ...bones];

  unique('parts', parts);
  unique('inputs', inputs);
  unique('requirements', requirements);
  unique('references', ids(exercise.references));
  unique('wrong turns', ids(exercise.wrongTurns));

  for (const { bone } of exercise.kept) known('kept', bone, bones);
  for (const zone of exercise.keepOut)
    for (const point of [zone.point, zone.near]) known('a keep-out zone', point.bone, spoken);
  for (const input of exercise.inputs) checkInput(input);
  for (const requirement of exercise.requirements) checkRequirement(requirement);
  for (const wrong of exercise.wrongTurns) {
    for (const missed of wrong.misses) known(`misses of ${wrong.id}`, missed, requirements);
  }
  for (const built of [...exercise.references, ...exercise.wrongTurns]) {
    for (const part of Object.keys(built.parts ?? {})) known(`parts of ${built.id}`, part, parts);
  }
  for (const { requirement } of exercise.hints) if (requirement) known('hints', requirement, requirements);

  function checkInput({ id, part, bone, channel, min, max }: Crossed['inputs'][number]) {
    if (part !== undefined) known(`part of input ${id}`, part, parts);
    if (bone !== undefined) known(`bone of input ${id}`, bone, bones);
    const isSwitch = exercise.parts.find((one) => one.id === part)?.is === 'switch' || (!part && bone === undefined);
    if (isSwitch !== (channel === undefined))
      fail(`input ${id} has ${channel ?? 'no channel'}; a bone needs one, a switch has none`);
    const rest = channel?.startsWith('size') ? 1 : 0;
    if (!(min < max)) fail(`input ${id} runs from ${min} to ${max}`);
    if (channel && (rest < min || rest > max)) fail(`input ${id} does not hold its rest, ${rest}`);
  }

  function checkRequirement(requirement: Crossed['requirements'][number]) {
    const kind = kindOf(requirement);
    for (const bone of kind.bones(requirement)) known(`requirement ${requirement.id}`, bone, spoken);
    for (const input of [...kind.inputs(requirement), ...Object.keys(requirement.at ?? {})]) {
      known(`requirement ${requirement.id}`, input, inputs);
    }
  }

  function unique(what: string, names: readonly string[]) {
    const repeated = names.find((name, index) => names.indexOf(name) !== index);
    if (repeated !== undefined) fail(`two ${what} are called ${repeated}`);
  }

  function known(where: string, name: string, names: readonly string[]) {
    if (!names.includes(name)) fail(`${where}: found "${name}", expected one of ${names.join(', ')}`);
  }

  function fail(message: string): never {
    throw new Error(`${exercise.id}: ${message}`);
  }
}
