import type { AimLink, Axis, UpToward } from '../../solver/document/rig.ts';
import { changeLink } from '../edit/changeLink.ts';
import { withField } from '../edit/draft.ts';
import { type Option, type Sentence, text } from './piece.ts';
import { axisPieces, pointPieces, vectorPieces } from './point.ts';
import { boneOptions, type Scope } from './scope.ts';

const UPS: readonly Option[] = [
  { value: 'none', says: 'by the shortest turn' },
  { value: 'point', says: 'with an up vector toward a point' },
  { value: 'direction', says: 'with an up vector along a direction' },
  { value: 'axis', says: 'with an up vector along a bone’s axis' },
];
type Up = NonNullable<AimLink['up']>;

/** "… its +z at the base of wind_left, by the shortest turn" */
export function aimSentence(scope: Scope, bone: string, link: AimLink): Sentence {
  const of = `${link.name} on ${bone}`;
  const others = boneOptions(scope, bone);
  const set = (what: string, next: AimLink) => changeLink(bone, link.name, what, () => next);
  return [
    text('its '),
    ...axisPieces(`axis of ${of}`, link.axis ?? '+z', (axis) => set('axis', aimedAlong(link, axis))),
    text(' at '),
    ...pointPieces('target', of, link.target, others, (target) => set('target', { ...link, target })),
    text(', '),
    {
      is: 'choice',
      label: `up vector of ${of}`,
      value: upKind(link.up),
      options: UPS,
      edit: (value) => set('up vector', withField(link, 'up', newUp(link, value, others[0]?.value ?? bone))),
    },
    ...(link.up ? upPieces(scope, bone, link, link.up) : []),
  ];
}

/** ": its +y toward the tip of mast" */
function upPieces(scope: Scope, bone: string, link: AimLink, up: Up): Sentence {
  const of = `${link.name} on ${bone}`;
  const set = (what: string, next: Up) => changeLink(bone, link.name, what, () => ({ ...link, up: next }));
  return [
    text(': its '),
    ...axisPieces(`up axis of ${of}`, up.axis, (axis) => set('up axis', { ...up, axis })),
    ...towardPieces(scope, of, up.toward, (toward) => set('up vector', { ...up, toward })),
  ];
}

function towardPieces(
  scope: Scope,
  of: string,
  toward: UpToward,
  set: (toward: UpToward) => ReturnType<typeof changeLink>,
): Sentence {
  if ('direction' in toward) {
    return [
      text(' toward '),
      ...vectorPieces(`up direction of ${of}`, toward.direction, (direction) => set({ direction })),
    ];
  }
  if (!('axis' in toward)) {
    return [text(' toward '), ...pointPieces('up point', of, toward, boneOptions(scope), set)];
  }
  return [
    text(' along the '),
    ...axisPieces(`axis of the up bone of ${of}`, toward.axis, (axis) => set({ ...toward, axis })),
    text(' of '),
    {
      is: 'choice',
      label: `up bone of ${of}`,
      value: toward.bone,
      options: boneOptions(scope),
      names: true,
      edit: (other) => set({ ...toward, bone: other }),
    },
  ];
}

function upKind(up: AimLink['up']): string {
  if (!up) return 'none';
  if ('direction' in up.toward) return 'direction';
  return 'axis' in up.toward ? 'axis' : 'point';
}

/** The link with another axis; an up axis that lay along that takes the place of the old one. */
function aimedAlong(link: AimLink, axis: Axis): AimLink {
  const aimed = withField(link, 'axis', axis === '+z' ? undefined : axis);
  if (!link.up || !areParallel(link.up.axis, axis)) return aimed;
  return { ...aimed, up: { ...link.up, axis: link.axis ?? '+z' } };
}

/** Of named axes; a vector is left to whoever writes it. */
const areParallel = (a: Axis, b: Axis): boolean => typeof a === 'string' && typeof b === 'string' && a[1] === b[1];

/** An up axis that the aim axis leaves room for. */
function newUp(link: AimLink, kind: string, other: string): Up | undefined {
  if (kind === 'none') return undefined;
  const along = typeof link.axis === 'string' && link.axis[1] === 'y';
  const axis = link.up?.axis ?? (along ? '+z' : '+y');
  if (kind === 'direction') return { axis, toward: { direction: [0, 1, 0] } };
  const bone = link.up && 'bone' in link.up.toward ? link.up.toward.bone : other;
  return { axis, toward: kind === 'axis' ? { bone, axis: '+y' } : { bone } };
}
