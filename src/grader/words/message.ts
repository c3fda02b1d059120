import type { Exercise } from '../exercise/exercise.ts';
import { kindOf, type Requirement } from '../requirements/table.ts';
import type { RequirementResult } from '../result.ts';
import { amountText } from './amount.ts';

/** What to say of one requirement: what was asked and met; or what was measured, why, and what to look at. */
export function messageOf(exercise: Exercise, result: RequirementResult): string {
  const requirement = exercise.requirements.find(({ id }) => id === result.id)!;
  if (result.status === 'met') return requirement.says;
  if (result.status === 'not-checked') return 'Not checked: the rig cannot be evaluated yet.';
  return [missedText(exercise, requirement, result), wrongTurnText(exercise, result)].filter(Boolean).join(' ');
}

/** What the learner is told of the wrong turn they took, or ''. */
export function wrongTurnText(exercise: Exercise, result: RequirementResult): string {
  return exercise.wrongTurns.find(({ id }) => id === result.diagnosis)?.tells ?? '';
}

function missedText(exercise: Exercise, requirement: Requirement, result: RequirementResult): string {
  const { cause } = result;
  if (cause?.why === 'unbound') return unboundText(exercise, cause.part);
  if (cause?.why === 'gone') return goneText(cause.bone);
  if (cause?.why === 'locked') {
    return `The proof cannot move ${nameOf(exercise, cause.input)}: it is locked, and an animator needs it.`;
  }
  if (requirement.missed) return requirement.missed;
  return capital(
    exercise,
    kindOf(requirement).missed(requirement, {
      measured: amountText(result.measured, result.unit),
      allowed: amountText(result.allowed, result.unit),
      places: cause?.why === 'structure' ? cause.places : [],
      nameOf: (spoken) => nameOf(exercise, spoken),
    }),
  );
}

function unboundText(exercise: Exercise, id: string): string {
  const { is, name, given, says } = exercise.parts.find((part) => part.id === id)!;
  return given ? goneText(name) : `Which ${is} is ${says}? Call it ${name}, or choose which it is.`;
}

const goneText = (name: string): string => `The rig no longer has ${name}, which was given.`;

/** A part as the task calls it, an input by what it moves, or a bone by its name. */
function nameOf(exercise: Exercise, spoken: string): string {
  const part = exercise.parts.find(({ id }) => id === spoken);
  if (part) return part.says;
  const input = exercise.inputs.find(({ id }) => id === spoken);
  if (!input) return spoken;
  const moved = input.part ? saysOf(exercise, input.part) : (input.bone ?? input.switch!);
  return input.channel ? `${moved} (${input.channel.replace('.', ' ')})` : moved;
}

const saysOf = (exercise: Exercise, part: string): string => exercise.parts.find(({ id }) => id === part)!.says;

/** A sentence that begins with a name begins as the name does. */
function capital(exercise: Exercise, text: string): string {
  const [first] = text.split(' ', 1);
  const isName =
    exercise.parts.some(({ says }) => says === first) || exercise.start.bones.some(({ name }) => name === first);
  return isName ? text : text.charAt(0).toUpperCase() + text.slice(1);
}
