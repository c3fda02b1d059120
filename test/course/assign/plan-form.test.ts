import { expect, test } from 'vitest';
import { idOf, newForm, type PlanForm, planOf } from '../../../src/course/assign/make/plan-form.ts';

const form = (more: Partial<PlanForm> = {}): PlanForm => ({
  ...newForm(new Uint8Array(6)),
  zone: 'Europe/Berlin',
  title: 'On the quay',
  chosen: [{ id: 'one-vane', weight: '1', tolerances: {} }],
  ...more,
});

test('what is filled in by itself is enough with a title and one exercise', () => {
  expect(planOf(form())).toEqual({
    plan: {
      id: 'on-the-quay-000000',
      title: 'On the quay',
      exercises: [{ id: 'one-vane', weight: 1 }],
      passMark: 0.6,
    },
  });
});

test('every field finds its place', () => {
  const made = planOf(
    form({
      chosen: [{ id: 'one-vane', weight: '2.5', tolerances: { points: '1', 'follows-depth': '' } }],
      attempts: '3',
      opens: '2026-11-30T09:00',
      due: '2026-12-04T17:00',
      latePercent: '10',
      lateUntil: '2026-12-07T17:00',
      house: { name: 'house.json', value: { names: 'lower' } },
    }),
  );
  expect(made).toMatchObject({
    plan: {
      exercises: [{ id: 'one-vane', weight: 2.5, tolerances: { points: 1 } }],
      attempts: 3,
      opens: '2026-11-30T09:00+01:00',
      due: '2026-12-04T17:00+01:00',
      late: { perDay: 0.1, until: '2026-12-07T17:00+01:00' },
      house: { names: 'lower' },
    },
  });
});

test.each([
  [{ title: ' ' }, 'Give it a title.'],
  [{ chosen: [] }, 'Choose at least one exercise.'],
  [{ passPercent: '101' }, 'The pass mark is from 0 to 100 per cent.'],
  [{ passPercent: '' }, 'The pass mark is from 0 to 100 per cent.'],
  [{ attempts: '1.5' }, 'Attempts are a whole number from 1, or left empty.'],
  [{ chosen: [{ id: 'one-vane', weight: '0', tolerances: {} }] }, 'The weight of one-vane is a number above 0.'],
])('%j is told', (more, fault) => {
  expect(planOf(form(more))).toEqual({ faults: [fault] });
});

test('an id that is settled outlives the title, and none is too long', () => {
  expect(idOf(form({ id: 'quay-1', title: 'Another' }))).toBe('quay-1');
  expect(idOf(form({ title: 'long '.repeat(40) }))).toMatch(/^[a-z0-9-]{1,64}$/);
});
