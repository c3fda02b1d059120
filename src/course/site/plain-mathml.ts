import type { Element, Root } from 'hast';
import { visit } from 'unist-util-visit';

const boldCapitalA = 0x1d400;
const boldSmallA = 0x1d41a;

/**
 * Leaves of KaTeX's MathML only what MathML Core draws: bold letters become the letters that Unicode has for
 * them (Mathematical Alphanumeric Symbols, U+1D400 on), since browsers pass over `mathvariant="bold"`, and the
 * TeX source beside each formula goes.
 */
export function plainMathml() {
  return (tree: Root) => {
    visit(tree, 'element', (node, index, parent) => {
      if (node.tagName === 'annotation' && parent && index !== undefined) {
        parent.children.splice(index, 1);
        return index;
      }
      if (node.properties.mathvariant === 'bold' || node.properties.mathVariant === 'bold') embolden(node);
      return undefined;
    });
  };
}

function embolden(node: Element) {
  for (const child of node.children) {
    if (child.type === 'text') child.value = [...child.value].map(boldLetter).join('');
  }
  delete node.properties.mathvariant;
  delete node.properties.mathVariant;
}

/** The bold letter of Unicode for a–z and A–Z; any other character as it is. */
export function boldLetter(letter: string): string {
  if (/^[a-z]$/.test(letter)) return String.fromCodePoint(boldSmallA + letter.codePointAt(0)! - 97);
  if (/^[A-Z]$/.test(letter)) return String.fromCodePoint(boldCapitalA + letter.codePointAt(0)! - 65);
  return letter;
}
