import type { Axis, AxisName, Point, Vec3 } from '../../solver/document/rig.ts';
import type { Edit } from '../edit/draft.ts';
import { withField } from '../edit/draft.ts';
import { type Option, type Piece, plainOptions, text } from './piece.ts';

const PLACES: readonly Option[] = [
  { value: '0', says: 'base' },
  { value: '0.5', says: 'middle' },
  { value: '1', says: 'tip' },
  { value: 'along', says: 'point' },
];
const AXES: readonly AxisName[] = ['+x', '-x', '+y', '-y', '+z', '-z'];

/** "the base of wind_left", with the place along the bone and the bone to choose. */
export function pointPieces(
  role: string,
  of: string,
  point: Point,
  bones: readonly Option[],
  set: (point: Point) => Edit,
): Piece[] {
  const at = point.at ?? 0;
  const named = PLACES.some((place) => place.value === String(at));
  const pieces: Piece[] = [
    text('the '),
    {
      is: 'choice',
      label: `point of the ${role} of ${of}`,
      value: named ? String(at) : 'along',
      options: PLACES,
      edit: (value) => set(withPlace(point, value === 'along' ? 0.25 : Number(value))),
    },
  ];
  if (!named) pieces.push(...alongPieces(role, of, point, set));
  pieces.push(text(' of '), {
    is: 'choice',
    label: `${role} of ${of}`,
    value: point.bone,
    options: bones,
    names: true,
    edit: (bone) => set({ ...point, bone }),
  });
  return pieces;
}

/** An axis of a bone: one of the six, or three numbers of a direction of its own. */
export function axisPieces(label: string, axis: Axis, set: (axis: Axis) => Edit): Piece[] {
  const own = typeof axis !== 'string';
  const choice: Piece = {
    is: 'choice',
    label,
    value: own ? 'own' : axis,
    options: [...plainOptions(AXES).map(signed), { value: 'own', says: 'direction' }],
    edit: (value) => set(value === 'own' ? vectorOf(axis) : (value as AxisName)),
  };
  if (!own) return [choice];
  return [choice, text(' '), ...vectorPieces(label, axis, (vector) => set(unit(vector)))];
}

/** Three numbers in a row. */
export function vectorPieces(
  label: string,
  vector: Vec3,
  set: (vector: Vec3) => Edit,
  unitName = '',
  step = 0.1,
): Piece[] {
  return [0, 1, 2].flatMap((i): Piece[] => [
    ...(i > 0 ? [text(', ')] : []),
    {
      is: 'number',
      label: `${label}, ${'xyz'[i]}`,
      value: vector[i]!,
      unit: unitName,
      quiet: i < 2,
      step,
      edit: (value) => set(vector.with(i, value) as unknown as Vec3),
    },
  ]);
}

function alongPieces(role: string, of: string, point: Point, set: (point: Point) => Edit): Piece[] {
  return [
    text(' '),
    {
      is: 'number',
      label: `place along the ${role} of ${of}`,
      value: point.at ?? 0,
      unit: '',
      step: 0.05,
      edit: (at) => set(withPlace(point, at)),
    },
    text(' of the way from base to tip'),
  ];
}

function withPlace(point: Point, at: number): Point {
  return withField(point, 'at', at === 0 ? undefined : at);
}

function vectorOf(axis: Axis): Vec3 {
  if (typeof axis !== 'string') return axis;
  const sign = axis[0] === '-' ? -1 : 1;
  return ['x', 'y', 'z'].map((letter) => (letter === axis[1] ? sign : 0)) as unknown as Vec3;
}

/** The direction at length 1; one of length 0 stays, to be refused with its reason. */
function unit([x, y, z]: Vec3): Vec3 {
  const length = Math.sqrt(x * x + y * y + z * z);
  return length === 0 ? [x, y, z] : [x / length, y / length, z / length];
}

function signed(option: Option): Option {
  return { ...option, says: option.says.replace('-', '−') };
}
