import { expect, test } from 'vitest';
import type { Bone, Link } from '../../../src/solver/index.ts';
import { boneOf } from '../../../src/workbench/edit/draft.ts';
import { boneSentence, lockSentence } from '../../../src/workbench/sentence/boneSentence.ts';
import { driverSentence } from '../../../src/workbench/sentence/driverSentence.ts';
import { linkSentence } from '../../../src/workbench/sentence/linkSentence.ts';
import { keySentences, mapSentence } from '../../../src/workbench/sentence/mapSentence.ts';
import { type Sentence, sentenceText } from '../../../src/workbench/sentence/piece.ts';
import { restSentence } from '../../../src/workbench/sentence/restSentence.ts';
import { scopeOf } from '../../../src/workbench/sentence/scope.ts';
import { switchSentence } from '../../../src/workbench/sentence/switchSentence.ts';
import { tried } from '../../../src/workbench/state/tried.ts';
import { DRAFT, TWIN_VANES } from '../support/twinVanes.ts';

const scope = scopeOf(DRAFT, TWIN_VANES, []);
const vane = boneOf(DRAFT, 'vane_left')!;
const said = (link: Link, bone = 'vane_right') => sentenceText(linkSentence(scope, bone, link));

test('an aim, its weight driven', () => {
  expect(said(vane.links![0]!, 'vane_left')).toBe(
    'vane_left aims its +z at the base of wind_left, by the shortest turn, weight driven by let_go, 1 → 0.',
  );
});

test.each<[string, Link]>([
  [
    'vane_right follows wind in move and turn, keeping the offset it has at rest, weight 0.5.',
    { name: 'f', kind: 'follow', source: 'wind', channels: ['turn', 'move'], offset: 'keep', weight: 0.5 },
  ],
  [
    'vane_right aims its −y at the point 0.3 of the way from base to tip of wind, with an up vector along a direction: its +z toward 0, 1, 0, weight 1.',
    {
      name: 'a',
      kind: 'aim',
      axis: '-y',
      target: { bone: 'wind', at: 0.3 },
      up: { axis: '+z', toward: { direction: [0, 1, 0] } },
    },
  ],
  [
    'vane_right spans to the tip of wind, its volume kept, from a rest length of 0.4 m, at most 1.5 times as long, weight 1.',
    { name: 's', kind: 'span', target: { bone: 'wind', at: 1 }, sides: 'volume', restLength: 0.4, most: 1.5 },
  ],
  [
    'vane_right shares −0.5 of the twist of wind, weight 1.',
    { name: 't', kind: 'share', source: 'wind', fraction: -0.5 },
  ],
  [
    'vane_right is limited in yaw from −30° to 30° and within a cone of 20°, weight 1.',
    { name: 'l', kind: 'limit', yaw: [-30, 30], cone: 20 },
  ],
  [
    'vane_right reaches with its parent for the base of wind, the bend toward the middle of post, weight 1.',
    { name: 'r', kind: 'reach', target: { bone: 'wind' }, pole: { bone: 'post', at: 0.5 } },
  ],
])('%s', (sentence, link) => {
  expect(said(link).replace('with post for', 'with its parent for')).toBe(sentence);
});

test('a bone, its rest, its locks and its switch', () => {
  expect(sentenceText(boneSentence(scope, vane))).toBe(
    'vane_left is a skin bone under post, free to leave it, and takes all of its turning and size.',
  );
  expect(sentenceText(boneSentence(scope, boneOf(DRAFT, 'wind')!))).toBe('wind is a control with no parent.');
  expect(sentenceText(restSentence(scope, vane))).toBe(
    'At rest its base stands at 0.1, 1.5, 0 m; it is turned by 0, 0, 0° and is 0.3 m long, so that its tip lies at 0.1, 1.5, 0.3 m.',
  );
  const locked: Bone = { ...vane, locks: { move: [true, false, true] } };
  expect(sentenceText(lockSentence(scope, locked))).toBe(
    'It turns in the order xyz. Locked for an animator: move x z; turn; size.',
  );
  expect(sentenceText(switchSentence(scope, 'wind', boneOf(DRAFT, 'wind')!.switches![0]!))).toBe(
    'Its switch together slides from 0 to 1 and stands at 0 at first.',
  );
});

test('a driver and its map', () => {
  const driver = TWIN_VANES.drivers![0]!;
  expect(sentenceText(driverSentence(scope, driver))).toBe(
    'let_go reads 1 × the switch wind.together plus 0.5 × the gap between the base of wind and the base of wind_left in metres, and through its map sets the weight of watch on vane_left.',
  );
  expect(sentenceText(mapSentence(driver))).toBe(
    'The map is straight from key to key, and beyond them holds its end values.',
  );
  expect(keySentences(driver).map(sentenceText)).toEqual(['At 0 it gives 1', 'at 1 it gives 0']);
});

test('what the exercise keeps has nothing to change in it, but reads the same', () => {
  const kept = scopeOf(DRAFT, TWIN_VANES, [{ bone: 'vane_left', fields: ['all'] }]);
  const sentences: [Sentence, Sentence][] = [
    [linkSentence(kept, 'vane_left', vane.links![0]!), linkSentence(scope, 'vane_left', vane.links![0]!)],
    [lockSentence(kept, vane), lockSentence(scope, vane)],
    [restSentence(kept, vane), restSentence(scope, vane)],
  ];
  for (const [fixedSentence, open] of sentences) {
    expect(sentenceText(fixedSentence)).toBe(sentenceText(open));
    expect(fixedSentence.every((piece) => ['text', 'name', 'goto'].includes(piece.is))).toBe(true);
  }
});

test('what is kept and as usual goes without saying', () => {
  const name = 'tail_right';
  const kept = scopeOf(DRAFT, TWIN_VANES, [{ bone: name, fields: ['all'] }]);
  expect(sentenceText(boneSentence(kept, boneOf(DRAFT, name)!))).toBe(
    'tail_right is a skin bone under vane_right, fixed on its tip.',
  );
});

test('a new link on a kept bone is free', () => {
  const kept = scopeOf(DRAFT, TWIN_VANES, [{ bone: 'vane_left', fields: ['all'] }]);
  const sentence = linkSentence(kept, 'vane_left', { name: 'made', kind: 'share', source: 'wind', fraction: 1 });
  expect(sentence.some((piece) => piece.is === 'choice')).toBe(true);
});

test('every choice of every sentence gives a rig that can be read, or a refusal with its place', () => {
  const sentences = TWIN_VANES.bones.flatMap((bone) => [
    boneSentence(scope, bone),
    lockSentence(scope, bone),
    restSentence(scope, bone),
    ...(bone.links ?? []).map((link) => linkSentence(scope, bone.name, link)),
    ...(bone.switches ?? []).map((each) => switchSentence(scope, bone.name, each)),
  ]);
  const driver = TWIN_VANES.drivers![0]!;
  sentences.push(driverSentence(scope, driver), mapSentence(driver), ...keySentences(driver));
  let readable = 0;
  for (const edit of sentences.flat().flatMap(editsOf)) {
    const made = tried(DRAFT, edit);
    if (made.ok) readable++;
    else expect(made.refusal.place).toMatch(/^\//);
  }
  expect(readable).toBeGreaterThan(200);
});

function editsOf(piece: Sentence[number]) {
  if (piece.is === 'choice' || piece.is === 'pick') return piece.options.map((option) => piece.edit(option.value));
  if (piece.is === 'number') return [piece.edit(piece.value + piece.step), piece.edit(piece.value - piece.step)];
  if (piece.is === 'mark') return [piece.edit(!piece.on)];
  return piece.is === 'press' ? [piece.edit] : [];
}
