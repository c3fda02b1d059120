import type { Driver } from '../../solver/document/rig.ts';
import { addKey, invertMap, removeKey, setBeyond, setBezier, setKey, setShape } from '../edit/maps.ts';
import { type Option, type Piece, type Sentence, text } from './piece.ts';

const SHAPES: readonly Option[] = [
  { value: 'straight', says: 'straight' },
  { value: 'eased', says: 'eased' },
  { value: 'stepped', says: 'stepped' },
  { value: 'bezier', says: 'a curve of its own' },
];
const BEYOND: readonly Option[] = [
  { value: 'hold', says: 'holds its end values' },
  { value: 'extend', says: 'goes on at its end slopes' },
];

/** "The map is straight from key to key and beyond them holds its end values." */
export function mapSentence(driver: Driver): Sentence {
  const { map } = driver;
  const shape = map.shape ?? 'straight';
  const bezier = typeof shape === 'string' ? [] : bezierPieces(driver.name, shape.bezier);
  return [
    text('The map is '),
    {
      is: 'choice',
      label: `shape of the map of ${driver.name}`,
      value: typeof shape === 'string' ? shape : 'bezier',
      options: SHAPES,
      edit: (value) => setShape(driver.name, value as 'straight' | 'eased' | 'stepped' | 'bezier'),
    },
    ...bezier,
    text(' from key to key, and beyond them '),
    {
      is: 'choice',
      label: `ends of the map of ${driver.name}`,
      value: map.beyond ?? 'hold',
      options: BEYOND,
      edit: (value) => setBeyond(driver.name, value as 'hold' | 'extend'),
    },
    text('. '),
    { is: 'press', label: `Invert the map of ${driver.name}`, text: 'invert it', edit: invertMap(driver.name) },
    text(' '),
    { is: 'press', label: `Add a key to the map of ${driver.name}`, text: 'add a key', edit: addKey(driver.name) },
  ];
}

/** "At 0 it gives 1", one sentence for each key. */
export function keySentences(driver: Driver): Sentence[] {
  const { keys } = driver.map;
  return keys.map(([x, y], i): Sentence => {
    const of = `key ${i + 1} of ${driver.name}`;
    const pieces: Piece[] = [
      text(i === 0 ? 'At ' : 'at '),
      {
        is: 'number',
        label: `input at ${of}`,
        value: x,
        unit: '',
        step: 0.1,
        edit: (next) => setKey(driver.name, i, [next, y]),
      },
      text(' it gives '),
      {
        is: 'number',
        label: `output at ${of}`,
        value: y,
        unit: '',
        step: 0.1,
        edit: (next) => setKey(driver.name, i, [x, next]),
      },
    ];
    if (keys.length > 2) {
      pieces.push(text(' '), {
        is: 'press',
        label: `Take ${of} away`,
        text: 'not this',
        edit: removeKey(driver.name, i),
      });
    }
    return pieces;
  });
}

function bezierPieces(driver: string, bezier: readonly [number, number, number, number]): Piece[] {
  const labels = ['first control x', 'first control y', 'second control x', 'second control y'];
  const numbers = bezier.flatMap((value, i): Piece[] => [
    text(i === 0 ? ' ' : ', '),
    {
      is: 'number',
      label: `${labels[i]} of the map of ${driver}`,
      value,
      unit: '',
      step: 0.05,
      edit: (next) => setBezier(driver, bezier.with(i, next) as [number, number, number, number]),
    },
  ]);
  return [text(' through'), ...numbers];
}
