import type { ReachLink } from '../../solver/document/rig.ts';
import { changeLink } from '../edit/changeLink.ts';
import { boneOf, withField } from '../edit/draft.ts';
import { type Piece, type Sentence, text } from './piece.ts';
import { pointPieces } from './point.ts';
import { boneOptions, type Scope } from './scope.ts';

/** "… with thigh for the base of paw_goal, the bend toward the base of knee_pole" */
export function reachSentence(scope: Scope, bone: string, link: ReachLink): Sentence {
  const of = `${link.name} on ${bone}`;
  const others = boneOptions(scope, bone);
  const upper = boneOf(scope.draft, bone)?.parent ?? 'its parent';
  const set = (what: string, next: ReachLink) => changeLink(bone, link.name, what, () => next);
  return [
    text(`with ${upper} for `),
    ...pointPieces('target', of, link.target, others, (target) => set('target', { ...link, target })),
    text(', the bend '),
    ...polePieces(),
  ];

  function polePieces(): Piece[] {
    const choice: Piece = {
      is: 'choice',
      label: `pole of ${of}`,
      value: link.pole ? 'point' : 'none',
      options: [
        { value: 'none', says: 'as it is at rest' },
        { value: 'point', says: 'toward' },
      ],
      edit: (value) => set('pole', withField(link, 'pole', value === 'none' ? undefined : { bone: firstOther() })),
    };
    if (!link.pole) return [choice];
    const pole = pointPieces('pole point', of, link.pole, others, (next) => set('pole', { ...link, pole: next }));
    return [choice, text(' '), ...pole];
  }

  function firstOther(): string {
    const free = others.find((option) => option.value !== upper && option.value !== link.target.bone);
    return free?.value ?? link.target.bone;
  }
}
