import { describe, expect, test } from 'vitest';
import { readRig } from '../../../src/solver/index.ts';
import { changed, expectRule, mustRead, quay, type Rule } from './trial.ts';

const free = (name: string, parent: string | null, more: object = {}) => ({
  name,
  parent,
  role: 'helper',
  rest: { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 1 },
  ...more,
});
const rigOf = (bones: readonly object[]) => ({ format: 'counterpose/rig', version: 1, bones });
const manyBones = (count: number) => rigOf(Array.from({ length: count }, (_, i) => free(`rib_${i}`, null)));
const chain = (count: number) =>
  rigOf(Array.from({ length: count }, (_, i) => free(`rib_${i}`, i === 0 ? null : `rib_${i - 1}`)));
const reach = { links: [{ name: 'fetch', kind: 'reach', target: { bone: 'kite' } }] };
const limits = (count: number) =>
  Array.from({ length: count }, (_, i) => ({ name: `keep_${i}`, kind: 'limit', cone: 9 }));
const long = 'a'.repeat(64);

test('the quay reads as it stands', () => {
  expect(mustRead(readRig(quay))).toEqual(quay);
});

const RULES: Rule[] = [
  {
    rule: 'a rig is an object',
    refused: [['', [quay]]],
    place: '',
    found: /a list of 1/,
    expected: /a rig, an object/,
  },
  {
    rule: 'format',
    refused: [['/format', 'counterpose/answer']],
    place: '/format',
    found: /answer/,
    expected: /"counterpose\/rig"/,
  },
  {
    rule: 'format is needed',
    refused: [['/format', undefined]],
    place: '/format',
    found: /^nothing$/,
    expected: /"counterpose\/rig"/,
  },
  { rule: 'version', refused: [['/version', 2]], place: '/version', found: /^2$/, expected: /version 1/ },
  {
    rule: 'version is needed',
    refused: [['/version', undefined]],
    place: '/version',
    found: /nothing/,
    expected: /version 1/,
  },
  {
    rule: 'bones are needed',
    refused: [['/bones', undefined]],
    place: '/bones',
    found: /nothing/,
    expected: /a list of bones/,
  },
  {
    rule: 'bones are a list',
    passes: [['/title', '']],
    refused: [['/bones', {}]],
    place: '/bones',
    found: /empty object/,
    expected: /a list of bones/,
  },
  { rule: 'a title is a text', refused: [['/title', 7]], place: '/title', found: /7/, expected: /a text/ },
  {
    rule: 'no unknown field of a rig',
    refused: [['/tittle', 'Quay']],
    place: '/tittle',
    found: /unknown field "tittle"/,
    expected: /^"title", perhaps: a rig has the fields/,
  },
  {
    rule: 'a bone is an object',
    refused: [['/bones/0', null]],
    place: '/bones/0',
    found: /null/,
    expected: /a bone, an object with the fields name, parent/,
  },
  {
    rule: 'no unknown field of a bone',
    refused: [['/bones/0/colour', 'red']],
    place: '/bones/0/colour',
    found: /"colour"/,
    expected: /a bone has the fields/,
  },
  {
    rule: 'name is needed',
    refused: [['/bones/1/name', undefined]],
    place: '/bones/1/name',
    found: /nothing/,
    expected: /a name: 1 to 64/,
  },
  {
    rule: 'parent is needed',
    refused: [['/bones/0/parent', undefined]],
    place: '/bones/0/parent',
    found: /nothing/,
    expected: /or null for a root/,
  },
  {
    rule: 'role is needed',
    refused: [['/bones/0/role', undefined]],
    place: '/bones/0/role',
    found: /nothing/,
    expected: /"skin", "helper", "control" or "guide"/,
  },
  {
    rule: 'rest is needed',
    refused: [['/bones/0/rest', undefined]],
    place: '/bones/0/rest',
    found: /nothing/,
    expected: /a rest, an object/,
  },
  {
    rule: 'base is needed',
    refused: [['/bones/0/rest/base', undefined]],
    place: '/bones/0/rest/base',
    found: /nothing/,
    expected: /a base/,
  },
  {
    rule: 'turn is needed',
    refused: [['/bones/0/rest/turn', undefined]],
    place: '/bones/0/rest/turn',
    found: /nothing/,
    expected: /unit quaternion/,
  },
  {
    rule: 'length is needed',
    refused: [['/bones/0/rest/length', undefined]],
    place: '/bones/0/rest/length',
    found: /nothing/,
    expected: /a length above 0/,
  },
  {
    rule: 'names up to 64 characters',
    passes: [['/bones/5/name', long]],
    refused: [['/bones/5/name', `${long}a`]],
    place: '/bones/5/name',
    found: /"a{40}…"/,
    expected: /1 to 64/,
  },
  {
    rule: 'names of letters, digits, _ and -',
    passes: [['/bones/5/name', '-_9Z']],
    refused: [['/bones/5/name', 'gäuge']],
    place: '/bones/5/name',
    found: /gäuge/,
    expected: /letters A–Z/,
  },
  { rule: 'no empty name', refused: [['/bones/5/name', '']], place: '/bones/5/name', found: /""/, expected: /1 to 64/ },
  {
    rule: 'no line end after a name',
    refused: [['/bones/5/name', 'gauge\n']],
    place: '/bones/5/name',
    found: /gauge\\u\{a\}/,
    expected: /a name/,
  },
  {
    rule: 'names once each',
    refused: [['/bones/5/name', 'post']],
    place: '/bones/5/name',
    found: /"post" a second time/,
    expected: /no other bone/,
  },
  {
    rule: 'parent names a bone',
    refused: [['/bones/3/parent', 'pots']],
    place: '/bones/3/parent',
    found: /"pots"/,
    expected: /a bone of this rig.*"post", perhaps/,
  },
  {
    rule: 'parent is a name or null',
    refused: [['/bones/3/parent', 1]],
    place: '/bones/3/parent',
    found: /^1$/,
    expected: /null for a root/,
  },
  {
    rule: 'role is one of four',
    passes: [['/bones/0/role', 'guide']],
    refused: [['/bones/0/role', 'skim']],
    place: '/bones/0/role',
    found: /"skim"/,
    expected: /"skin", perhaps/,
  },
  {
    rule: 'length above 0',
    passes: [['/bones/5/rest/length', Number.MIN_VALUE]],
    refused: [['/bones/5/rest/length', 0]],
    place: '/bones/5/rest/length',
    found: /^0$/,
    expected: /above 0/,
  },
  {
    rule: 'base is three numbers',
    refused: [['/bones/5/rest/base', [0, 1]]],
    place: '/bones/5/rest/base',
    found: /\[0, 1\]/,
    expected: /a list of 3/,
  },
  {
    rule: 'base holds numbers',
    refused: [['/bones/5/rest/base/1', '1']],
    place: '/bones/5/rest/base/1',
    found: /"1"/,
    expected: /a finite number/,
  },
  {
    rule: 'numbers are finite',
    passes: [['/bones/5/rest/base/1', Number.MAX_VALUE]],
    refused: [['/bones/5/rest/base/1', Infinity]],
    place: '/bones/5/rest/base/1',
    found: /infinity/,
    expected: /finite/,
  },
  {
    rule: 'not a number is refused',
    refused: [['/bones/5/rest/base/1', Number.NaN]],
    place: '/bones/5/rest/base/1',
    found: /NaN/,
    expected: /finite/,
  },
  {
    rule: 'a turn of unit length',
    passes: [['/bones/5/rest/turn/3', 1 + 0.99e-6]],
    refused: [['/bones/5/rest/turn/3', 1 + 1.01e-6]],
    place: '/bones/5/rest/turn',
    found: /a length of 1\.00000101/,
    expected: /a quaternion of length 1/,
  },
  {
    rule: 'a turn of unit length from below',
    passes: [['/bones/5/rest/turn/3', 1 - 0.99e-6]],
    refused: [['/bones/5/rest/turn/3', 1 - 1.01e-6]],
    place: '/bones/5/rest/turn',
    found: /a length of 0\.9999989/,
    expected: /length 1/,
  },
  {
    rule: 'a turn is not nothing',
    refused: [['/bones/5/rest/turn', [0, 0, 0, 0]]],
    place: '/bones/5/rest/turn',
    found: /a length of 0/,
    expected: /length 1/,
  },
  {
    rule: 'a turn does not overflow',
    refused: [['/bones/5/rest/turn', [1e200, 0, 0, 1]]],
    place: '/bones/5/rest/turn',
    found: /Infinity/,
    expected: /length 1/,
  },
  {
    rule: 'attach',
    passes: [['/bones/5/attach', 'free']],
    refused: [['/bones/5/attach', 'base']],
    place: '/bones/5/attach',
    found: /"base"/,
    expected: /"free" or "tip"/,
  },
  {
    rule: 'attached needs a parent',
    refused: [['/bones/5/attach', 'tip']],
    place: '/bones/5/attach',
    found: /without a parent/,
    expected: /a parent, or "free"/,
  },
  {
    rule: "attached to the parent's tip at rest",
    passes: [['/bones/2/rest/base/1', 1.5 + 0.99e-6]],
    refused: [['/bones/2/rest/base/1', 1.5 + 1.01e-6]],
    place: '/bones/2/rest/base',
    found: /from the tip of "post"/,
    expected: /within 0.000001 m/,
  },
  {
    rule: 'inherits',
    passes: [['/bones/2/inherits', 'uniform']],
    refused: [['/bones/2/inherits', 'none']],
    place: '/bones/2/inherits',
    found: /"none"/,
    expected: /"all", "uniform" or "turn"/,
  },
  {
    rule: 'turnOrder',
    passes: [['/bones/0/turnOrder', 'zyx']],
    refused: [['/bones/0/turnOrder', 'xyx']],
    place: '/bones/0/turnOrder',
    found: /"xyx"/,
    expected: /"xyz", perhaps/,
  },
  {
    rule: 'locks may miss any part',
    passes: [['/bones/0/locks', {}]],
    refused: [['/bones/0/locks', { rotate: [true, true, true] }]],
    place: '/bones/0/locks/rotate',
    found: /"rotate"/,
    expected: /move, turn and size/,
  },
  {
    rule: 'locks are three',
    refused: [['/bones/0/locks/turn', [true, true]]],
    place: '/bones/0/locks/turn',
    found: /a list of 2/,
    expected: /a list of 3/,
  },
  {
    rule: 'locks are true or false',
    refused: [['/bones/0/locks/turn/2', 1]],
    place: '/bones/0/locks/turn/2',
    found: /1/,
    expected: /true or false/,
  },
  {
    rule: 'link names once each',
    refused: [['/bones/2/links/1/name', 'watch']],
    place: '/bones/2/links/1/name',
    found: /"watch" a second time/,
    expected: /link of this bone/,
  },
  {
    rule: 'no reach on a root',
    refused: [['/bones/5/links/0', reach.links[0]]],
    place: '/bones/5/links/0',
    found: /a reach on a root/,
    expected: /a bone with a parent/,
  },
  {
    rule: 'one reach on a bone',
    refused: [['/bones/4/links/1', { ...reach.links[0], name: 'more' }]],
    place: '/bones/4/links/1',
    found: /second reach on this bone/,
    expected: /one reach/,
  },
  {
    rule: 'one reach below a bone',
    passes: [['/bones/6', free('hook', 'jib', reach)]],
    refused: [['/bones/6', free('hook', 'boom', reach)]],
    place: '/bones/6/links/0',
    found: /turns "boom", after the one on "jib"/,
    expected: /one child/,
  },
];

test.each(RULES)('$rule', expectRule);

describe('sizes', () => {
  test('256 bones, 64 links a bone, depth 128', () => {
    mustRead(readRig(manyBones(256)));
    mustRead(readRig(changed(quay, ['/bones/1/links', limits(64)])));
    mustRead(readRig(chain(128)));
  });

  test.each([
    ['257 bones', manyBones(257), '/bones', /257 bones/, /256/],
    ['65 links', changed(quay, ['/bones/1/links', limits(65)]), '/bones/1/links', /65 links/, /64/],
    ['a bone at depth 129', chain(129), '/bones/128/parent', /depth 129/, /128, where a root is 1/],
  ])('not %s', (_, document, place, found, expected) => {
    expectRuleOn(document, place, found, expected);
  });
});

function expectRuleOn(document: unknown, place: string, found: RegExp, expected: RegExp): void {
  const reading = readRig(document);
  if (reading.ok) throw new Error('not refused');
  expect(reading.refusal).toEqual({
    place,
    found: expect.stringMatching(found),
    expected: expect.stringMatching(expected),
  });
}

describe('what is readable, and left to evaluation', () => {
  test.each([
    ['parents in a loop', rigOf([free('a', 'b'), free('b', 'a'), free('c', 'b')])],
    ['a bone that is its own parent', rigOf([free('a', 'a')])],
    ['256 parents in a loop', rigOf(Array.from({ length: 256 }, (_, i) => free(`a${i}`, `a${(i + 1) % 256}`)))],
    ['a link to its own bone', changed(quay, ['/bones/2/links/0/target/bone', 'vane'])],
    [
      'two aims at each other',
      changed(quay, ['/bones/5/links/0/target/bone', 'vane'], ['/bones/2/links/0/target/bone', 'gauge']),
    ],
    ['no bones', rigOf([])],
    ['bones before their parents', rigOf([free('b', 'a'), free('a', null)])],
  ])('%s', (_, document) => {
    expect(mustRead(readRig(document))).toEqual(document);
  });
});
