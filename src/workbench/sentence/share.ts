import type { ShareLink } from '../../solver/document/rig.ts';
import { changeLink } from '../edit/changeLink.ts';
import { type Sentence, text } from './piece.ts';
import { boneOptions, type Scope } from './scope.ts';
import { drivenPieces, drivePress, driverOf } from './weight.ts';

/** "… 0.5 of the twist of hand" */
export function shareSentence(scope: Scope, bone: string, link: ShareLink): Sentence {
  const of = `${link.name} on ${bone}`;
  const set = (what: string, next: ShareLink) => changeLink(bone, link.name, what, () => next);
  const driver = driverOf(scope, bone, link.name, 'fraction');
  const fraction: Sentence = driver
    ? [text('a fraction '), ...drivenPieces(driver), text(',')]
    : [
        {
          is: 'number',
          label: `fraction of ${of}`,
          value: link.fraction,
          unit: '',
          step: 0.1,
          edit: (value) => set('fraction', { ...link, fraction: value }),
        },
        ...drivePress(scope, `fraction of ${of}`, bone, link.name, 'fraction'),
      ];
  return [
    ...fraction,
    text(' of the twist of '),
    {
      is: 'choice',
      label: `source of ${of}`,
      value: link.source,
      options: boneOptions(scope, bone),
      names: true,
      edit: (source) => set('source', { ...link, source }),
    },
  ];
}
