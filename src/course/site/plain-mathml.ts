import type { Element, ElementContent, Root } from 'hast';
import { SKIP, visit } from 'unist-util-visit';

const boldCapitalA = 0x1d400;
const boldSmallA = 0x1d41a;
const functionApplication = '\u2061';
const bars = ['∣', '∥'];
const signs = ['−', '+', '±'];

/**
 * Leaves of KaTeX's MathML only what MathML Core draws, and spaces it as TeX does: bold letters become the letters
 * that Unicode has for them, since browsers pass over `mathvariant="bold"`; a thin space follows the name of a
 * function; bars of a length hug what they enclose; a sign after an equals sign belongs to its number. The TeX
 * source beside each formula goes. Displayed formulas and code can be scrolled from the keyboard.
 */
export function plainMathml() {
  return (tree: Root) => {
    visit(tree, 'element', (node, index, parent) => {
      if (node.tagName === 'annotation' && parent && index !== undefined) {
        parent.children.splice(index, 1);
        return [SKIP, index];
      }
      if (node.properties.mathvariant === 'bold') embolden(node);
      node.children.forEach((child, place) => {
        if (isOperator(child)) space(child, node.children[place - 1]);
      });
      node.children = spacedFunctions(node.children);
      if (isWide(node)) node.properties.tabIndex = 0;
      return undefined;
    });
  };
}

function space(operator: Element, before: ElementContent | undefined) {
  const sign = textOf(operator);
  if (sign === functionApplication) operator.properties.rspace = '0.1667em';
  if (bars.includes(sign)) Object.assign(operator.properties, { lspace: '0', rspace: '0' });
  if (signs.includes(sign) && (!before || isOperator(before)) && !isClosing(before))
    operator.properties.form = 'prefix';
}

/** A thin space before the name of a function that a number or a letter multiplies. */
function spacedFunctions(children: ElementContent[]): ElementContent[] {
  return children.flatMap((child, place) => {
    const [before, after] = [children[place - 1], children[place + 1]];
    const isNamed = after !== undefined && isOperator(after) && textOf(after) === functionApplication;
    return isNamed && before?.type === 'element' && !isOperator(before) ? [thinSpace(), child] : [child];
  });
}

const thinSpace = (): Element => ({
  type: 'element',
  tagName: 'mspace',
  properties: { width: '0.1667em' },
  children: [],
});

const isOperator = (node: ElementContent): node is Element => node.type === 'element' && node.tagName === 'mo';

const isClosing = (node: ElementContent | undefined) =>
  node !== undefined && [')', ']', '}', ...bars].includes(textOf(node as Element));

function textOf(node: Element): string {
  const [only] = node.children;
  return only?.type === 'text' ? only.value : '';
}

/** What may be wider than a narrow screen scrolls by itself, and so must be reached by the keyboard. */
const isWide = (node: Element) => node.tagName === 'pre' || (isFormula(node) && isDisplayed(node.children[0]));

const isDisplayed = (math: ElementContent | undefined) =>
  math?.type === 'element' && math.properties.display === 'block';

const isFormula = ({ properties }: Element) =>
  Array.isArray(properties.className) && properties.className.includes('katex');

function embolden(node: Element) {
  for (const child of node.children) {
    if (child.type === 'text') child.value = [...child.value].map(boldLetter).join('');
  }
  delete node.properties.mathvariant;
}

/** The bold letter of Unicode (Mathematical Alphanumeric Symbols) for a–z and A–Z; any other character as it is. */
export function boldLetter(letter: string): string {
  if (/^[a-z]$/.test(letter)) return String.fromCodePoint(boldSmallA + letter.codePointAt(0)! - 97);
  if (/^[A-Z]$/.test(letter)) return String.fromCodePoint(boldCapitalA + letter.codePointAt(0)! - 65);
  return letter;
}
