import { expect, test } from 'vitest';
import { headingsIn } from '../../src/course/site/headings.ts';
import { paragraphs } from '../../src/course/site/paragraphs.ts';
import { slug } from '../../src/course/site/slug.ts';

test('headingsIn gives the second-level headings in order, without marks and what follows a colon', () => {
  const html =
    '<h2 id="a">The <em>picture</em></h2><h3 id="b">No</h3><h2 class="caps" id="c">A typical failure: it slips</h2>';
  expect(headingsIn(html)).toEqual([
    { id: 'a', text: 'The picture' },
    { id: 'c', text: 'A typical failure' },
  ]);
});

test('slug makes a fragment name', () => {
  expect(slug('A typical failure: the boom slides off its pin')).toBe('a-typical-failure-the-boom-slides-off-its-pin');
});

test('paragraphs parts at blank lines and joins the lines in between', () => {
  expect(paragraphs('\nTurn the\nvane.\n\n  \nKeep the post.\n')).toEqual(['Turn the vane.', 'Keep the post.']);
});
