import type { Driver, DriverInput, DriverSource, Point } from '../../solver/document/rig.ts';
import type { Edit } from '../edit/draft.ts';
import { addInput, removeInput, renameDriver, setInput, setOutput } from '../edit/drivers.ts';
import { outputFrom, outputOptions, outputValue } from './outputs.ts';
import { type Option, offersLast, type Piece, plainOptions, type Sentence, text } from './piece.ts';
import { pointPieces } from './point.ts';
import { allSwitches, boneOptions, type Scope } from './scope.ts';
import { firstSource } from './weight.ts';

const SOURCES: readonly Option[] = [
  { value: 'switch', says: 'the switch' },
  { value: 'turn', says: 'the turn' },
  { value: 'shift', says: 'the shift' },
  { value: 'gap', says: 'the gap' },
];

/** "let_go reads the switch wind.together, and through its map sets the weight of watch on vane_left." */
export function driverSentence(scope: Scope, driver: Driver): Sentence {
  const inputs = driver.inputs.flatMap((input, i) => [
    ...(i > 0 ? [text(' plus ')] : []),
    ...inputPieces(scope, driver, input, i),
  ]);
  const more = firstSource(scope);
  return offersLast([
    {
      is: 'word',
      label: `name of the driver ${driver.name}`,
      value: driver.name,
      edit: (to) => renameDriver(driver.name, to),
    },
    text(' reads '),
    ...inputs,
    ...(more ? [addPress(driver, more)] : []),
    text(', and through its map sets '),
    {
      is: 'choice',
      label: `output of ${driver.name}`,
      value: outputValue(driver.output),
      options: outputOptions(scope.draft.rig, driver),
      edit: (value) => setOutput(driver.name, outputFrom(value)),
    },
    text('.'),
  ]);
}

function addPress(driver: Driver, from: DriverSource): Piece {
  return {
    is: 'press',
    label: `Add an input to ${driver.name}`,
    text: 'plus another',
    last: true,
    edit: addInput(driver.name, from),
  };
}

function inputPieces(scope: Scope, driver: Driver, input: DriverInput, index: number): Piece[] {
  const of = driver.inputs.length > 1 ? `input ${index + 1} of ${driver.name}` : `input of ${driver.name}`;
  const set = (next: DriverInput) => setInput(driver.name, index, next);
  const pieces: Piece[] = [
    {
      is: 'number',
      label: `factor of ${of}`,
      value: input.times ?? 1,
      unit: '',
      step: 0.1,
      edit: (times) => set({ ...input, times }),
    },
    text(' × '),
    {
      is: 'choice',
      label: `kind of ${of}`,
      value: Object.keys(input.from)[0]!,
      options: SOURCES,
      edit: (kind) => set({ ...input, from: sourceOfKind(scope, input.from, kind) }),
    },
    text(' '),
    ...sourcePieces(scope, of, input.from, (from) => set({ ...input, from })),
  ];
  if (driver.inputs.length < 2) return pieces;
  const leave: Piece = {
    is: 'press',
    label: `Take ${of} away`,
    text: 'not this',
    edit: removeInput(driver.name, index),
  };
  return [...pieces, text(' '), leave];
}

function sourcePieces(scope: Scope, of: string, from: DriverSource, set: (from: DriverSource) => Edit): Piece[] {
  if ('switch' in from) {
    const options = plainOptions(allSwitches(scope.draft.rig.bones));
    return [
      { is: 'choice', label: `switch of ${of}`, value: from.switch, options, edit: (value) => set({ switch: value }) },
    ];
  }
  const bones = boneOptions(scope);
  if ('gap' in from) {
    const [a, b] = from.gap;
    return [
      text('between '),
      ...pointPieces('first point', of, a, bones, (point) => set({ gap: [point, b] })),
      text(' and '),
      ...pointPieces('second point', of, b, bones, (point) => set({ gap: [a, point] })),
      text(' in metres'),
    ];
  }
  const turning = 'turn' in from;
  const at = turning ? from.turn : from.shift;
  const put = (next: typeof at) => set(turning ? { turn: next } : { shift: next });
  return [
    text('of '),
    {
      is: 'choice',
      label: `bone of ${of}`,
      value: at.bone,
      options: bones,
      names: true,
      edit: (bone) => put({ ...at, bone }),
    },
    text(turning ? ' about ' : ' along '),
    {
      is: 'choice',
      label: `axis of ${of}`,
      value: at.axis,
      options: plainOptions(['x', 'y', 'z']),
      edit: (axis) => put({ ...at, axis: axis as 'x' | 'y' | 'z' }),
    },
    text(turning ? ' in degrees' : ' in metres'),
  ];
}

/** Another kind of source, with the bone it spoke of kept. */
function sourceOfKind(scope: Scope, from: DriverSource, kind: string): DriverSource {
  const { bones } = scope.draft.rig;
  const first = bones.find((bone) => bone.role === 'control')?.name ?? bones[0]!.name;
  const bone = boneIn(from) ?? first;
  if (kind === 'turn') return { turn: { bone, axis: 'z' } };
  if (kind === 'shift') return { shift: { bone, axis: 'z' } };
  if (kind === 'switch') return { switch: allSwitches(bones)[0] ?? `${bone}.switch` };
  const other = bones.find((each) => each.name !== bone)?.name ?? bone;
  const gap: [Point, Point] = [{ bone }, { bone: other }];
  return { gap };
}

function boneIn(from: DriverSource): string | undefined {
  if ('turn' in from) return from.turn.bone;
  if ('shift' in from) return from.shift.bone;
  return 'gap' in from ? from.gap[0].bone : undefined;
}
