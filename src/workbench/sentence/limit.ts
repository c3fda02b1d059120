import type { LimitLink } from '../../solver/document/rig.ts';
import { changeLink } from '../edit/changeLink.ts';
import { withField } from '../edit/draft.ts';
import { type Piece, type Sentence, text } from './piece.ts';
import { vectorPieces } from './point.ts';

const BOUNDS = ['yaw', 'pitch', 'twist', 'cone', 'move'] as const;
type Bound = (typeof BOUNDS)[number];
type Set = (what: string, next: LimitLink) => ReturnType<typeof changeLink>;

/** "… in yaw from −30° to 30° and within a cone of 20°" */
export function limitSentence(bone: string, link: LimitLink): Sentence {
  const of = `${link.name} on ${bone}`;
  const set: Set = (what, next) => changeLink(bone, link.name, what, () => next);
  const present = BOUNDS.filter((bound) => link[bound] !== undefined);
  const absent = BOUNDS.filter((bound) => link[bound] === undefined);
  return [
    ...present.flatMap((bound, i) => [
      ...(i > 0 ? [text(' and ')] : []),
      ...boundPieces(link, bound, of, set),
      ...(present.length > 1 ? freePress(link, bound, of, set) : []),
    ]),
    ...absent.flatMap((bound): Piece[] => [
      {
        is: 'press',
        label: `Limit the ${bound} by ${of}`,
        text: `and ${bound}`,
        last: true,
        edit: set(bound, withBound(link, bound)),
      },
    ]),
  ];
}

function boundPieces(link: LimitLink, bound: Bound, of: string, set: Set): Piece[] {
  if (bound === 'cone') {
    return [
      text('within a cone of '),
      {
        is: 'number',
        label: `cone of ${of}`,
        value: link.cone ?? 0,
        unit: '°',
        step: 1,
        edit: (cone) => set('cone', { ...link, cone }),
      },
    ];
  }
  if (bound === 'move') return movePieces(link, of, set);
  const [least, most] = link[bound] ?? [0, 0];
  return [
    text(`in ${bound} from `),
    {
      is: 'number',
      label: `least ${bound} of ${of}`,
      value: least,
      unit: '°',
      step: 1,
      edit: (value) => set(bound, { ...link, [bound]: [value, most] }),
    },
    text(' to '),
    {
      is: 'number',
      label: `most ${bound} of ${of}`,
      value: most,
      unit: '°',
      step: 1,
      edit: (value) => set(bound, { ...link, [bound]: [least, value] }),
    },
  ];
}

function movePieces(link: LimitLink, of: string, set: Set): Piece[] {
  const move = link.move ?? { min: [0, 0, 0], max: [0, 0, 0] };
  return [
    text('in move from '),
    ...vectorPieces(
      `least move of ${of}`,
      move.min,
      (min) => set('move', { ...link, move: { ...move, min } }),
      'm',
      0.01,
    ),
    text(' to '),
    ...vectorPieces(
      `most move of ${of}`,
      move.max,
      (max) => set('move', { ...link, move: { ...move, max } }),
      'm',
      0.01,
    ),
  ];
}

function freePress(link: LimitLink, bound: Bound, of: string, set: Set): Piece[] {
  return [
    text(' '),
    {
      is: 'press',
      label: `Free the ${bound} from ${of}`,
      text: 'free',
      edit: set(bound, withField(link, bound, undefined)),
    },
  ];
}

function withBound(link: LimitLink, bound: Bound): LimitLink {
  if (bound === 'cone') return { ...link, cone: 45 };
  if (bound === 'move') return { ...link, move: { min: [-0.1, -0.1, -0.1], max: [0.1, 0.1, 0.1] } };
  return { ...link, [bound]: bound === 'pitch' ? [-45, 45] : [-90, 90] };
}
