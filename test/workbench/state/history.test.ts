import fc from 'fast-check';
import { expect, test } from 'vitest';
import { begun, changed, MERGE_MS, redone, undone } from '../../../src/workbench/state/history.ts';
import { difference, patched } from '../../../src/workbench/state/patch.ts';

const document = fc.jsonValue({ maxDepth: 4 });

test('patches lead from any document to any other and back', () => {
  fc.assert(
    fc.property(document, document, (was, is) => {
      // As the browser keeps them.
      const patches = structuredClone(difference(was, is));
      expect(patched(was, patches)).toEqual(is);
      expect(patched(is, patches, true)).toEqual(was);
    }),
  );
});

test('a bone put in among others is one small patch', () => {
  const [a, b, c] = [{ name: 'post' }, { name: 'wind' }, { name: 'vane_left' }];
  const patches = difference({ bones: [a, c] }, { bones: [a, b, c] });
  expect(patches).toEqual([{ at: ['bones'], index: 1, out: [], in: [b] }]);
});

test('undo goes back to the start and redo to the end again, through any edits', () => {
  fc.assert(
    fc.property(document, fc.array(document, { maxLength: 8 }), (start, documents) => {
      let history = begun<unknown>(start);
      const passed = [start];
      for (const [i, next] of documents.entries()) {
        const before = history;
        history = changed(history, next, { says: 'change', when: i });
        if (history !== before) passed.push(next);
      }
      for (const expected of passed.slice(0, -1).toReversed()) {
        history = undone(history);
        expect(history.document).toEqual(expected);
      }
      expect(undone(history)).toBe(history);
      for (const expected of passed.slice(1)) {
        history = redone(history);
        expect(history.document).toEqual(expected);
      }
      expect(redone(history)).toBe(history);
    }),
  );
});

test('a change after undo gives up what was undone', () => {
  let history = begun({ n: 0 });
  for (const n of [1, 2, 3]) history = changed(history, { n }, { says: `${n}`, when: n });
  history = changed(undone(undone(history)), { n: 9 }, { says: '9', when: 9 });
  expect(history.steps.map((step) => step.says)).toEqual(['1', '9']);
  expect(redone(history)).toBe(history);
});

test('quick changes of one number are one step, slow ones and others are not', () => {
  const change = (n: number, when: number, merge: string) => ({ says: `to ${n}`, merge, when });
  let history = begun({ n: 0 });
  history = changed(history, { n: 1 }, change(1, 0, 'n'));
  history = changed(history, { n: 2 }, change(2, MERGE_MS - 1, 'n'));
  expect(history.steps).toHaveLength(1);
  expect(undone(history).document).toEqual({ n: 0 });
  history = changed(history, { n: 3 }, change(3, 2 * MERGE_MS, 'n'));
  history = changed(history, { n: 4 }, change(4, 2 * MERGE_MS + 1, 'm'));
  expect(history.steps).toHaveLength(3);
});
