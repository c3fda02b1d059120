import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chainStateOf, withStep } from '../../../src/delivery/submission/chain.ts';
import { readSubmission, readSubmissionText } from '../../../src/delivery/submission/readSubmission.ts';
import { isReceiptOf, receiptOf } from '../../../src/delivery/submission/receipt.ts';
import type { ChainStep, Submission } from '../../../src/delivery/submission/submission.ts';

const answers = [1, 2, 3].map((n) => ({ exercise: 'one-vane', seed: n }));
const head = { assignment: 'quay-week-1', learner: 'otter-7' };

function chained(): Submission {
  const chain = answers.reduce<ChainStep[]>(
    (steps, answer, i) => withStep(steps, head, { at: `2026-12-0${i + 1}T10:00Z`, exercise: 'one-vane', answer }),
    [],
  );
  return { format: 'counterpose/submission', version: 1, ...head, answers, chain };
}

describe('a chain', () => {
  test('is whole as it was made', () => {
    expect(chainStateOf(chained())).toBe('whole');
    expect(chainStateOf({ ...chained(), chain: undefined } as unknown as Submission)).toBe('none');
  });

  test.each([
    ['a step taken out', (steps: ChainStep[]) => steps.toSpliced(1, 1)],
    ['two steps changed over', (steps: ChainStep[]) => [steps[1]!, steps[0]!, steps[2]!]],
    ['another time', (steps: ChainStep[]) => steps.with(0, { ...steps[0]!, at: '2026-11-01T10:00Z' })],
    ['another answer', (steps: ChainStep[]) => steps.with(1, { ...steps[1]!, answer: steps[0]!.answer })],
  ])('shows %s', (_, change) => {
    const submission = chained();
    expect(chainStateOf({ ...submission, chain: change([...submission.chain!]) })).toBe('broken');
  });

  test('of another learner, or another assignment, does not fit', () => {
    expect(chainStateOf({ ...chained(), learner: 'toad-2' })).toBe('broken');
    expect(chainStateOf({ ...chained(), assignment: 'quay-week-2' })).toBe('broken');
  });

  test('tells of every answer, or lacks some', () => {
    const submission = chained();
    expect(chainStateOf({ ...submission, answers: [...answers, { exercise: 'one-vane', seed: 9 }] })).toBe(
      'lacks-answers',
    );
    expect(chainStateOf({ ...submission, chain: submission.chain!.slice(0, 2) })).toBe('lacks-answers');
  });
});

describe('a receipt', () => {
  test('is that of its file, however it was copied', () => {
    const receipt = receiptOf(chained());
    expect(receipt).toMatch(/^([0-9A-HJKMNP-TV-Z]{4}-){4}[0-9A-HJKMNP-TV-Z]{4}$/);
    expect(isReceiptOf(receipt.toLowerCase().replaceAll('-', ' '), chained())).toBe(true);
    expect(isReceiptOf(receipt.replaceAll('1', 'l').replaceAll('0', 'O'), chained())).toBe(true);
  });

  test('is another of another file, and the same whatever the order of its fields', () => {
    const submission = chained();
    expect(isReceiptOf(receiptOf(submission), { ...submission, learner: 'toad-2' })).toBe(false);
    const turned = Object.fromEntries(Object.entries(submission).reverse()) as unknown as Submission;
    expect(receiptOf(turned)).toBe(receiptOf(submission));
  });
});

describe('reading', () => {
  test('what was written is read back', () => {
    expect(readSubmissionText(JSON.stringify(chained()))).toEqual({ ok: true, value: chained() });
  });

  test('a broken answer spoils nothing, a broken head is refused at its place', () => {
    expect(readSubmission({ ...chained(), answers: [null, 'x', { deep: [] }] }).ok).toBe(true);
    expect(readSubmission({ ...chained(), learner: 'a\nb' })).toMatchObject({
      ok: false,
      refusal: { place: '/learner' },
    });
    expect(readSubmission({ ...chained(), mark: 1 })).toMatchObject({ ok: false, refusal: { place: '/mark' } });
    expect(readSubmission({ ...chained(), chain: [{}] })).toMatchObject({
      ok: false,
      refusal: { place: '/chain/0/at' },
    });
  });

  test('any JSON is read or refused in words', () => {
    fc.assert(
      fc.property(
        fc.jsonValue(),
        fc.constantFrom('learner', 'answers', 'chain', 'assignment', 'version'),
        (value, field) => {
          const read = readSubmission({ ...chained(), [field]: value });
          if (!read.ok) expect(read.refusal.found).not.toMatch(/undefined|\[object/);
        },
      ),
      { seed: 9 },
    );
  });
});
