import { describe, expect, test } from 'vitest';
import { analyse } from '../../../src/delivery/analysis/analyse.ts';
import type { Book, Note } from '../../../src/delivery/book/book.ts';
import { feedbackFor } from '../../../src/delivery/book/feedback.ts';
import { finalOf } from '../../../src/delivery/book/final.ts';
import { freeChoicesOf } from '../../../src/delivery/book/freeChoices.ts';
import { makeBook } from '../../../src/delivery/book/makeBook.ts';
import { FileMarker } from '../../../src/delivery/book/markFile.ts';
import { mergeBooks } from '../../../src/delivery/book/mergeBooks.ts';
import { readBook, readBookText } from '../../../src/delivery/book/readBook.ts';
import { readFeedbackText } from '../../../src/delivery/book/readFeedback.ts';
import { AssignmentGrader } from '../../../src/delivery/mark/gradeAnswer.ts';
import { answerOf, assignmentOf } from '../support.ts';

const assignment = assignmentOf();
const opened = { assignment, signedBy: null };
const marker = new FileMarker(opened, 5);
const roster = {
  learners: [
    { learner: 'otter-7', name: 'Otter' },
    { learner: 'toad-2', name: 'Toad' },
  ],
};
const file = (learner: string, answers: unknown[], collected = '2026-12-04T10:00Z') => {
  const submission = { format: 'counterpose/submission', version: 1, assignment: assignment.id, learner, answers };
  return marker.mark({ kind: 'text', path: `${learner}.json`, collected, text: JSON.stringify(submission) });
};
const vane = (learner: string, more = {}) => answerOf(assignment, learner, 'one-vane', more);
const hook = (learner: string) => answerOf(assignment, learner, 'how-high-the-hook');
const book = makeBook(opened, roster, [
  file('otter-7', [vane('otter-7', { wrong: true }), hook('otter-7')]),
  file('toad-2', [vane('toad-2')]),
]);
const otter = (own: Book) => own.learners[0]!;
const written = (...notes: Note[]): Book => ({
  ...book,
  learners: [{ ...otter(book), notes }, ...book.learners.slice(1)],
});
const head = (id: string, at = '2026-12-09T10:00Z') => ({ id, at, by: 'somebody' });

describe('what a learner gets in the end', () => {
  test('is what was proved, where nobody wrote anything', () => {
    expect(finalOf(book, otter(book)).mark).toBe(otter(book).handedIn[0]!.marked.mark);
    expect(finalOf(book, { ...otter(book), handedIn: [], counted: null }).mark).toBe(0);
  });

  test('has the last mark by hand in place of what was proved', () => {
    const first: Note = { ...head('a'), kind: 'override', exercise: 'one-vane', mark: 0.2, reason: 'half of it' };
    const later: Note = {
      ...head('b', '2026-12-10T10:00Z'),
      kind: 'override',
      exercise: 'one-vane',
      mark: 1,
      reason: 'unclear',
    };
    for (const notes of [
      [first, later],
      [later, first],
    ]) {
      const own = written(...notes);
      expect(finalOf(own, otter(own))).toMatchObject({ mark: 1, passed: true, byHand: ['one-vane'] });
    }
  });

  test('counts rubric lines as one exercise more, of mean weight', () => {
    const own = written(
      { ...head('a'), kind: 'rubric', line: 'names', mark: 5, outOf: 10, says: 'half' },
      { ...head('b'), kind: 'override', exercise: 'one-vane', mark: 1, reason: 'x' },
    );
    // Weights 2 and 1, both whole, and a rubric at one half with their mean weight 1.5.
    expect(finalOf(own, otter(own)).mark).toBeCloseTo((3 + 0.75) / 4.5, 12);
  });
});

describe('a book', () => {
  test('is read back as it was saved', () => {
    expect(readBookText(JSON.stringify(book))).toEqual({ ok: true, value: book });
  });

  test('with something wrong in it is refused at its place', () => {
    const odd = structuredClone(book) as unknown as {
      learners: { counted: number; handedIn: { marked: { mark: number } }[] }[];
    };
    odd.learners[0]!.handedIn[0]!.marked.mark = 7;
    expect(readBook(odd)).toMatchObject({
      ok: false,
      refusal: { place: '/learners/0/handedIn/0/marked/mark', found: '7' },
    });
    odd.learners[0]!.handedIn[0]!.marked.mark = 1;
    odd.learners[0]!.counted = 4;
    expect(readBook(odd).ok).toBe(false);
  });

  test('is put together with another: all notes once, whatever the order', () => {
    const a = written(
      { ...head('a'), kind: 'comment', exercise: null, says: 'one' },
      { ...head('c'), kind: 'comment', exercise: null, says: 'both' },
    );
    const b = written(
      { ...head('b'), kind: 'comment', exercise: null, says: 'two' },
      { ...head('c'), kind: 'comment', exercise: null, says: 'both' },
    );
    const idsOf = (one: Book) => otter(one).notes.map(({ id }) => id);
    const [ab, ba] = [mergeBooks(a, b), mergeBooks(b, a)];
    expect(ab.ok && idsOf(ab.value)).toEqual(['a', 'b', 'c']);
    expect(ba.ok && idsOf(ba.value)).toEqual(['a', 'b', 'c']);
    const other = { ...b, assignment: { ...b.assignment, id: 'another' } };
    expect(mergeBooks(a, other)).toMatchObject({ ok: false, refusal: { place: '/assignment/id' } });
  });
});

describe('free choices', () => {
  const grader = new AssignmentGrader(opened);
  const withNames = (learner: string) => {
    const answer = vane(learner) as { rig: { bones: object[] }; seed: number };
    const rest = { base: [0.1234, 0.5, 0.777], turn: [0, 0, 0, 1], length: 0.0421 };
    const extra = { name: 'my_gull', parent: null, role: 'helper', rest };
    return { ...answer, rig: { ...answer.rig, bones: [...answer.rig.bones, extra] } };
  };

  test('that are few tell nothing: short right answers are alike by nature', () => {
    const answer = vane('otter-7');
    expect(freeChoicesOf(answer, grader.exerciseOf('one-vane', answer.seed as number)!)).toBeNull();
  });

  test('that are the same in two learners’ answers flag both', () => {
    const three = makeBook(opened, roster, [
      file('otter-7', [withNames('otter-7')]),
      file('toad-2', [withNames('toad-2')]),
      file('heron-1', [vane('heron-1')]),
    ]);
    const alike = three.learners.filter(({ flags }) => flags.includes('alike')).map(({ learner }) => learner);
    expect(alike).toEqual(['otter-7', 'toad-2']);
  });
});

test('feedback is read back, and a forged one with markup in it is text like any other', () => {
  const feedback = feedbackFor(book, otter(book));
  expect(readFeedbackText(JSON.stringify(feedback))).toEqual({ ok: true, value: feedback });
  expect(readFeedbackText(JSON.stringify({ ...feedback, mark: 2 }))).toMatchObject({
    ok: false,
    refusal: { place: '/mark' },
  });
});

test('an analysis counts each learner once and leaves out who handed nothing in', () => {
  const { learners, isFew, items } = analyse({
    ...book,
    learners: [...book.learners, { ...otter(book), learner: 'x', handedIn: [], counted: null }],
  });
  expect({ learners, isFew }).toEqual({ learners: 2, isFew: true });
  expect(items[0]).toMatchObject({ exercise: 'one-vane', answered: 2, passed: 1 });
  expect(items[0]!.requirements[0]!.learners).toBe(1);
  expect(items[1]).toMatchObject({ answered: 1, difficulty: 0.5, itemRest: null });
});
