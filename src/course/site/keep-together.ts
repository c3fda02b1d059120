import type { Element, ElementContent, Root } from 'hast';
import { SKIP, visit } from 'unist-util-visit';

/** Keeps a comma or a full stop on the line of the formula or the glossary word before it. */
export function keepTogether() {
  return (tree: Root) => {
    visit(tree, (node) => {
      if (node.type === 'element' && hasClass(node, 'together')) return SKIP;
      if ('children' in node) node.children = joined(node.children as ElementContent[]);
      return undefined;
    });
  };
}

function joined(children: ElementContent[]): ElementContent[] {
  const kept: ElementContent[] = [];
  for (const child of children) {
    const before = kept.at(-1);
    const mark =
      child.type === 'text' && before && isWhole(before) ? /^[,.;:!?)’”]+/.exec(child.value)?.[0] : undefined;
    if (!mark || child.type !== 'text') {
      kept.push(child);
      continue;
    }
    kept[kept.length - 1] = {
      type: 'element',
      tagName: 'span',
      properties: { className: ['together'] },
      children: [before!, { type: 'text', value: mark }],
    };
    kept.push({ type: 'text', value: child.value.slice(mark.length) });
  }
  return kept;
}

/** Browsers may break a line after these, even before a comma. */
function isWhole(node: ElementContent): boolean {
  return node.type === 'element' ? hasClass(node, 'katex') : isTerm(node);
}

const hasClass = ({ properties }: Element, name: string) => [properties.className].flat().includes(name);

/** A component in the text is a node of MDX, of which hast's types know nothing. */
const isTerm = (node: { type: string; name?: string }) => node.type === 'mdxJsxTextElement' && node.name === 'Term';
