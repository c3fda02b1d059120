import { type Exercise, kindOf, markingOf, openExercise, responseKindOf } from '../../grader/index.ts';
import { readArguments } from '../arguments.ts';
import { Exercises } from '../content.ts';
import { print } from '../output.ts';
import { UsageError } from '../refusal.ts';
import { rigText } from '../rigText.ts';
import { seedOf } from '../seed.ts';
import type { ExitStatus, Verb } from '../verb.ts';

const OPTIONS = {
  list: { type: 'boolean' },
  seed: { type: 'string' },
  json: { type: 'boolean' },
  content: { type: 'string' },
} as const;

/** Lists the exercises, or prints all that is needed to write an answer to one by hand. */
export const exerciseVerb: Verb = {
  help: `
Usage: counterpose exercise --list [--json] [--content DIR]
       counterpose exercise ID [--seed N] [--json] [--content DIR]

Lists the exercises, or prints one as it is for a seed: its task, the rig it starts from, its parts, what the
proof moves and leaves out, and what it requires.

  --list         every exercise: id, lesson, kind, whether an instructor may set it, edition
  --seed N       the variant, a whole number; 0 (the exercise as drawn) where none is given
  --json         for machines
  --content DIR  look in this folder of lessons and exercises too
`,
  async run(args): Promise<ExitStatus> {
    const { values, positionals } = readArguments(args, OPTIONS);
    const exercises = new Exercises(values.content);
    if (values.list) {
      if (positionals.length > 0) throw new UsageError('--list takes no exercise');
      await print(listText(exercises, values.json === true));
      return 0;
    }
    const [id, ...more] = positionals;
    if (id === undefined || more.length > 0) throw new UsageError('one exercise is expected, or --list');
    const file = exercises.known(id);
    const exercise = openExercise(file.definition, { edition: file.edition, seed: seedOf(values.seed) });
    await print(values.json ? `${JSON.stringify(exerciseData(exercise))}\n` : exerciseText(exercise));
    return 0;
  },
};

function listText(exercises: Exercises, json: boolean): string {
  const rows = exercises.ids().map((id) => {
    const { definition, edition } = exercises.get(id)!;
    const { lesson, kind, graded } = definition;
    return { id, lesson, kind, graded, edition };
  });
  if (json) return `${JSON.stringify(rows)}\n`;
  const lines = rows.map(({ id, lesson, kind, graded, edition }) =>
    [lesson, id, kind, graded ? 'may be set' : 'for practice', edition].join('  '),
  );
  return `${lines.join('\n')}\n`;
}

function exerciseData(exercise: Exercise) {
  const { id, lesson, kind, graded, edition, seed, start, task, parts, inputs, keepOut, kept } = exercise;
  const { gates } = markingOf(exercise);
  const requirements = exercise.requirements.map((requirement) => {
    const rule = kindOf(requirement);
    const spoken = new Set(rule.bones(requirement));
    return {
      id: requirement.id,
      kind: requirement.kind,
      gate: gates.has(requirement.id),
      weight: requirement.weight ?? 1,
      allowed: requirement.allowed,
      unit: rule.unit(requirement),
      parts: parts.filter((part) => spoken.has(part.id)).map((part) => part.id),
      says: requirement.says,
    };
  });
  return {
    id,
    lesson,
    kind,
    graded,
    edition,
    seed,
    start,
    task,
    parts,
    inputs: inputs.map((input) => ({ ...input, channel: input.channel ?? null })),
    keepOut,
    requirements,
    kept,
    response: responseKindOf(kind)?.schema(exercise) ?? null,
  };
}

function exerciseText(exercise: Exercise): string {
  const { title, lesson, task, parts, requirements, start, structure, size } = exercise;
  const { gates } = markingOf(exercise);
  const partLines = parts.map(({ name, says, given }) => `  ${name}: ${says}${given ? '' : ' (to be made)'}`);
  const asked = requirements.map(
    ({ id, says }) => `  ${says}${gates.has(id) ? ' (holds already, and must still hold)' : ''}`,
  );
  const sections: [string, string[]][] = [
    ['Parts:', partLines],
    ['The rig as it is given:', rigText(start).map((line) => `  ${line}`)],
    ['Moved by the proof:', exercise.inputs.map((input) => `  ${inputText(exercise, input)}`)],
    ['Left out:', exercise.keepOut.map(({ says }) => `  ${says}`)],
    ['Required:', asked],
  ];
  const shown = sections.filter(([, lines]) => lines.length > 0).flatMap(([head, lines]) => ['', head, ...lines]);
  return [`${title} (lesson ${lesson}; ${structure}, size ${size})`, '', task, ...shown, ''].join('\n');
}

function inputText({ parts }: Exercise, { part, bone, switch: own, channel, min, max }: Exercise['inputs'][number]) {
  const name = parts.find(({ id }) => id === part)?.name ?? bone ?? own;
  if (!channel) return `${name} from ${min} to ${max}`;
  const unit = channel.startsWith('move') ? ' m' : channel.startsWith('turn') ? '°' : ' times';
  return `${name}, ${channel.replace('.', ' ')}, from ${min} to ${max}${unit}`;
}
