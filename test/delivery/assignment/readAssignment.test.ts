import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeKey } from '../../../src/delivery/assignment/keys.ts';
import { makeAssignment } from '../../../src/delivery/assignment/makeAssignment.ts';
import { readAssignment, readAssignmentText } from '../../../src/delivery/assignment/readAssignment.ts';
import { sign } from '../../../src/delivery/assignment/sign.ts';
import { base64url } from '../../../src/delivery/base64url.ts';
import { assignedMarking } from '../../../src/delivery/mark/markings.ts';
import { assignmentOf, definitionOf, PLAN } from '../support.ts';

const pair = makeKey(new Uint8Array(32).fill(7));
const signed = sign(assignmentOf(), pair);

const refusalOf = (text: string) => {
  const read = readAssignmentText(text);
  if (read.ok) throw new Error('it was read');
  return read.refusal;
};

describe('a signed assignment', () => {
  test('is read, with the key of who signed it', () => {
    const read = readAssignmentText(`\n${signed}\n`);
    expect(read.ok && read.value.assignment.title).toBe('On the quay');
    expect(read.ok && read.value.assignment.key?.x).toBe(pair.x);
  });

  test('is refused when any character is another', () => {
    fc.assert(
      fc.property(fc.nat(signed.length - 1), fc.constantFrom(...'AZaz09-_'), (at, other) => {
        fc.pre(signed[at] !== other);
        const changed = signed.slice(0, at) + other + signed.slice(at + 1);
        expect(readAssignmentText(changed).ok).toBe(false);
      }),
      { numRuns: 60, seed: 5 },
    );
  });

  test('is refused under another algorithm, or none, whatever its header claims', () => {
    const [, payload, signature] = signed.split('.');
    for (const alg of ['none', 'HS256', 'ES256']) {
      const header = base64url(new TextEncoder().encode(JSON.stringify({ alg })));
      expect(refusalOf(`${header}.${payload}.${signature}`).found).toContain(alg);
      expect(readAssignmentText(`${header}.${payload}.`).ok).toBe(false);
    }
  });

  test('is refused when somebody else put in a key of theirs without signing', () => {
    const other = makeKey(new Uint8Array(32).fill(8));
    const forged = sign(assignmentOf({ title: 'Easier' }), other);
    const [header, payload] = forged.split('.');
    expect(refusalOf(`${header}.${payload}.${signed.split('.')[2]}`).found).toContain('does not fit');
  });
});

describe('a plain assignment', () => {
  test('is read, signed by nobody', () => {
    expect(readAssignmentText(JSON.stringify(assignmentOf()))).toMatchObject({ ok: true, value: { signedBy: null } });
  });

  const changed = (change: (one: Record<string, unknown>) => void) => {
    const one = structuredClone(assignmentOf()) as unknown as Record<string, unknown>;
    change(one);
    const read = readAssignment(one);
    return read.ok ? null : read.refusal;
  };
  const firstOf = (one: Record<string, unknown>) => (one.exercises as Record<string, unknown>[])[0]!;

  test.each([
    [
      'a weight of nothing',
      (one: Record<string, unknown>) => Object.assign(firstOf(one), { weight: 0 }),
      '/exercises/0/weight',
    ],
    [
      'an exercise it does not carry',
      (one: Record<string, unknown>) => Object.assign(firstOf(one), { id: 'gull' }),
      '/exercises/0/id',
    ],
    [
      'an exercise twice',
      (one: Record<string, unknown>) => Object.assign(one, { exercises: [firstOf(one), firstOf(one)] }),
      '/exercises/1/id',
    ],
    [
      'a tolerance of no requirement',
      (one: Record<string, unknown>) => Object.assign(firstOf(one), { tolerances: { gull: 1 } }),
      '/exercises/0/tolerances',
    ],
    [
      'a time without a zone',
      (one: Record<string, unknown>) => Object.assign(one, { due: '2026-12-04T17:00' }),
      '/due',
    ],
    ['a time that is none', (one: Record<string, unknown>) => Object.assign(one, { due: '2026-13-04T17:00Z' }), '/due'],
    ['a day that is none', (one: Record<string, unknown>) => Object.assign(one, { due: '2026-02-30T17:00Z' }), '/due'],
    ['24 o’clock', (one: Record<string, unknown>) => Object.assign(one, { due: '2026-12-04T24:00Z' }), '/due'],
    [
      'an exercise carried twice',
      (one: Record<string, unknown>) => (one.carried as unknown[]).push((one.carried as unknown[])[0]),
      '/carried/2',
    ],
    [
      'due before it opens',
      (one: Record<string, unknown>) => Object.assign(one, { opens: '2026-12-05T17:00Z' }),
      '/due',
    ],
    ['a pass mark above all', (one: Record<string, unknown>) => Object.assign(one, { passMark: 60 }), '/passMark'],
    ['half an attempt', (one: Record<string, unknown>) => Object.assign(one, { attempts: 0.5 }), '/attempts'],
    ['an unknown field', (one: Record<string, unknown>) => Object.assign(one, { marks: {} }), '/marks'],
    [
      'an exercise changed after it was carried',
      (one: Record<string, unknown>) => {
        const [first] = one.carried as { definition: { title: string } }[];
        first!.definition.title = 'Another';
      },
      '/carried/0/edition',
    ],
  ])('is refused with %s', (_, change, place) => {
    expect(changed(change)?.place).toBe(place);
  });

  test('is refused with a tolerance of a gate, in words, and read with one of another requirement', () => {
    const { gates, exercise } = assignedMarking(definitionOf('one-vane'), {}, { edition: 'e', seed: 0 });
    const [gate] = [...gates];
    const earning = exercise.requirements.find(({ id }) => !gates.has(id))!;
    const withTolerance = (id: string) => changed((one) => Object.assign(firstOf(one), { tolerances: { [id]: 2 } }));
    expect(withTolerance(gate!)).toMatchObject({
      place: '/exercises/0/tolerances',
      found: `"${gate}", a gate`,
      expected: expect.stringContaining(earning.id),
    });
    expect(withTolerance(earning.id)).toBeNull();
  });

  test('is refused where an exercise cannot be opened, in words', () => {
    const made = makeAssignment(PLAN, (id) => ({ ...definitionOf(id), references: [] }));
    expect(made).toMatchObject({ ok: false, refusal: { place: '/carried/0/definition' } });
  });

  test.each([
    ['kind', 'fly', '/carried/0/definition/kind'],
    ['sizes', [], '/carried/0/definition/sizes'],
    ['title', {}, '/carried/0/definition/title'],
    ['requirements', [{ id: 'x' }], '/carried/0/definition/requirements/0/kind'],
    ['mark', 1, '/carried/0/definition'],
  ])('is refused where an exercise’s %s is %j', (field, value, place) => {
    const made = makeAssignment(PLAN, (id) => ({ ...definitionOf(id), [field]: value }));
    expect(made).toMatchObject({ ok: false, refusal: { place } });
  });

  test('of an exercise the course does not have is refused', () => {
    const made = makeAssignment(
      {
        ...PLAN,
        exercises: [
          { id: 'one-vane', weight: 1 },
          { id: 'gull', weight: 1 },
        ],
      },
      (id) => (id === 'gull' ? null : definitionOf(id)),
    );
    expect(made).toMatchObject({ ok: false, refusal: { place: '/exercises/1/id', found: '"gull"' } });
  });
});

test('any text is refused in words, or read', () => {
  const piece = fc.oneof(fc.string(), fc.json(), fc.constant(signed.slice(0, 400)), fc.constant('a.b.c'));
  fc.assert(
    fc.property(piece, piece, (a, b) => {
      const { found, expected } = refusalOf(a + b);
      expect(found).not.toMatch(/undefined|\[object/);
      expect(expected).not.toBe('');
    }),
    { numRuns: 300, seed: 6 },
  );
  expect(refusalOf('['.repeat(100_000)).found).not.toBe('');
  expect(refusalOf('{"__proto__":{"polluted":1}}').found).toContain('__proto__');
  expect(({} as { polluted?: number }).polluted).toBeUndefined();
});
