import type { SpanLink } from '../../solver/document/rig.ts';
import { changeLink } from '../edit/changeLink.ts';
import { boneOf, withField } from '../edit/draft.ts';
import { type Option, type Piece, type Sentence, text } from './piece.ts';
import { pointPieces } from './point.ts';
import { boneOptions, type Scope } from './scope.ts';

const SIDES: readonly Option[] = [
  { value: 'free', says: 'its sides as they are' },
  { value: 'volume', says: 'its volume kept' },
];
const BOUNDS = { least: 'at least', most: 'at most' } as const;

/** "… to the base of kite, its sides as they are, from a rest length of 0.4 m" */
export function spanSentence(scope: Scope, bone: string, link: SpanLink): Sentence {
  const of = `${link.name} on ${bone}`;
  const set = (what: string, next: SpanLink) => changeLink(bone, link.name, what, () => next);
  const length = boneOf(scope.draft, bone)?.rest.length ?? 1;
  return [
    text('to '),
    ...pointPieces('target', of, link.target, boneOptions(scope, bone), (target) => set('target', { ...link, target })),
    text(', '),
    {
      is: 'choice',
      label: `sides of ${of}`,
      value: link.sides ?? 'free',
      options: SIDES,
      edit: (value) => set('sides', withField(link, 'sides', value === 'volume' ? value : undefined)),
    },
    text(', from a rest length of '),
    {
      is: 'number',
      label: `rest length of ${of}`,
      value: link.restLength ?? length,
      unit: 'm',
      step: 0.01,
      edit: (metres) => set('rest length', withField(link, 'restLength', metres === length ? undefined : metres)),
    },
    ...boundPieces(link, of, 'least', set),
    ...boundPieces(link, of, 'most', set),
  ];
}

/** ", at most 1.5 times", or a button that adds the bound. */
function boundPieces(
  link: SpanLink,
  of: string,
  field: keyof typeof BOUNDS,
  set: (what: string, next: SpanLink) => ReturnType<typeof changeLink>,
): Piece[] {
  const value = link[field];
  const label = `${field} stretch of ${of}`;
  if (value === undefined) {
    return [
      {
        is: 'press',
        label: `Bound the ${label}`,
        text: `${BOUNDS[field]} …`,
        last: true,
        edit: set(`${field} stretch`, { ...link, [field]: 1 }),
      },
    ];
  }
  return [
    text(`, ${BOUNDS[field]} `),
    {
      is: 'number',
      label,
      value,
      unit: '',
      step: 0.05,
      edit: (next) => set(`${field} stretch`, { ...link, [field]: next }),
    },
    text(' times as long '),
    {
      is: 'press',
      label: `Free the ${label}`,
      text: 'free',
      edit: set(`${field} stretch`, withField(link, field, undefined)),
    },
  ];
}
