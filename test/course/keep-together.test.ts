import type { ElementContent, Root } from 'hast';
import { expect, test } from 'vitest';
import { keepTogether } from '../../src/course/site/keep-together.ts';

const formula: ElementContent = {
  type: 'element',
  tagName: 'span',
  properties: { className: ['katex'] },
  children: [],
};
const term = { type: 'mdxJsxTextElement', name: 'Term', attributes: [], children: [] } as unknown as ElementContent;
const emphasis: ElementContent = { type: 'element', tagName: 'em', properties: {}, children: [] };
const text = (value: string): ElementContent => ({ type: 'text', value });

function kept(...children: ElementContent[]) {
  const tree: Root = { type: 'root', children: [{ type: 'element', tagName: 'p', properties: {}, children }] };
  keepTogether()(tree);
  return (tree.children[0] as { children: ElementContent[] }).children;
}
const together = (node: ElementContent, mark: string) => ({
  type: 'element',
  tagName: 'span',
  properties: { className: ['together'] },
  children: [node, text(mark)],
});

test('a mark after a formula or a glossary word goes with it', () => {
  expect(kept(text('by '), formula, text(', and'))).toEqual([text('by '), together(formula, ','), text(' and')]);
  expect(kept(term, text(').'))).toEqual([together(term, ').'), text('')]);
});

test('a word after them does not, nor a mark after anything else', () => {
  expect(kept(formula, text(' and,'))).toEqual([formula, text(' and,')]);
  expect(kept(emphasis, text(', and'))).toEqual([emphasis, text(', and')]);
});
