import type { Bone, Vec3 } from '../../solver/document/rig.ts';
import type { Edit } from '../edit/draft.ts';
import { layLike, pointTip, standOn } from '../edit/layRest.ts';
import { setRest, tipOf } from '../edit/setRest.ts';
import { anglesOf, turnOf } from '../pose/angles.ts';
import { fixed, numberText, type Option, type Sentence, text } from './piece.ts';
import { vectorPieces } from './point.ts';
import { boneOptions, type Scope } from './scope.ts';

/** "At rest its base stands at 0.03, 1.5, 0 m, turned 0, 0, 0°, and it is 0.1 m long; …" */
export function restSentence(scope: Scope, bone: Bone): Sentence {
  const { rest } = bone;
  const angles = anglesOf(rest.turn, 'xyz');
  const sentence: Sentence = [
    text('At rest its base stands at '),
    ...(bone.attach === 'tip'
      ? [text(`${vectorText(rest.base)} m, on its parent’s tip`)]
      : vectorPieces(
          `rest base of ${bone.name}`,
          rest.base,
          (base) => setRest(bone.name, { base }, 'base'),
          'm',
          0.01,
        )),
    text('; it is turned by '),
    ...vectorPieces(
      `rest turn of ${bone.name}`,
      angles,
      (next) => setRest(bone.name, { turn: turnOf(next, 'xyz') }, 'turn'),
      '°',
      1,
    ),
    text(' and is '),
    {
      is: 'number',
      label: `rest length of ${bone.name}`,
      value: rest.length,
      unit: 'm',
      step: 0.01,
      edit: (length) => setRest(bone.name, { length }, 'length'),
    },
    text(` long, so that its tip lies at ${vectorText(tipOf(rest))} m.`),
  ];
  return scope.keeps(bone.name, 'rest') ? fixed(sentence) : [...sentence, ...layPieces(scope, bone)];
}

/** Ways to lay a bone by other bones, without typing numbers. */
function layPieces(scope: Scope, bone: Bone): Sentence {
  const others = boneOptions(scope, bone.name);
  if (others.length === 0) return [];
  const points: Option[] = others.flatMap(({ value }) => [
    { value: `${value}.0`, says: `the base of ${value}` },
    { value: `${value}.1`, says: `the tip of ${value}` },
  ]);
  const pick = (label: string, words: string, options: Option[], edit: (value: string) => Edit): Sentence => [
    text(' '),
    { is: 'pick', label: `${label} ${bone.name}`, text: words, options, edit },
  ];
  return [
    ...pick('bone to lay like', 'Lay it like', others, (other) => layLike(bone.name, other)),
    ...(bone.attach === 'tip'
      ? []
      : pick('point for the base of', 'Put its base on', points, (at) => standOn(bone.name, ...pointFrom(at)))),
    ...pick('point for the tip of', 'Put its tip on', points, (at) => pointTip(bone.name, ...pointFrom(at))),
  ];
}

function pointFrom(value: string): [bone: string, end: 0 | 1] {
  const dot = value.lastIndexOf('.');
  return [value.slice(0, dot), value.endsWith('1') ? 1 : 0];
}

function vectorText(vector: Vec3): string {
  return vector.map((value) => numberText(Number(value.toFixed(4)))).join(', ');
}
