import type { Switch } from '../../solver/document/rig.ts';
import { changeSwitch, renameSwitch } from '../edit/switches.ts';
import { fixed, type Piece, type Sentence, text } from './piece.ts';
import type { Scope } from './scope.ts';
import { drivenPieces } from './weight.ts';

/** "Its switch together slides from 0 to 1 and stands at 0 at first." */
export function switchSentence(scope: Scope, bone: string, own: Switch): Sentence {
  const reference = `${bone}.${own.name}`;
  const number = (field: 'min' | 'max' | 'default', says: string): Piece => ({
    is: 'number',
    label: `${says} of ${reference}`,
    value: own[field],
    unit: '',
    step: 0.1,
    edit: (value) => changeSwitch(bone, own.name, says, { [field]: value }),
  });
  const driver = scope.draft.rig.drivers?.find(({ output }) => 'switch' in output && output.switch === reference);
  const sentence: Sentence = [
    text('Its switch '),
    { is: 'word', label: `name of ${reference}`, value: own.name, edit: (to) => renameSwitch(bone, own.name, to) },
    text(' '),
    {
      is: 'choice',
      label: `kind of ${reference}`,
      value: own.sliding ? 'sliding' : 'ends',
      options: [
        { value: 'sliding', says: 'slides from' },
        { value: 'ends', says: 'is either' },
      ],
      edit: (value) => changeSwitch(bone, own.name, 'kind', { sliding: value === 'sliding' }),
    },
    text(' '),
    number('min', 'least value'),
    text(own.sliding ? ' to ' : ' or '),
    number('max', 'greatest value'),
    text(' and stands at '),
    number('default', 'first value'),
    text(' at first'),
    ...(driver ? [text('; it is '), ...drivenPieces(driver)] : []),
    text('.'),
  ];
  return isKeptSwitch(scope, bone, own.name) ? fixed(sentence) : sentence;
}

/** Whether the exercise keeps this switch as it is. */
export function isKeptSwitch(scope: Scope, bone: string, own: string): boolean {
  return scope.keeps(bone, 'switches') && scope.givenSwitch(bone, own);
}
