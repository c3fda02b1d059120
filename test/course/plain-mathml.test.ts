import { unified as processor } from '@astrojs/markdown-remark';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { describe, expect, test } from 'vitest';
import { boldLetter, plainMathml } from '../../src/course/site/plain-mathml.ts';

const markdown = processor({
  remarkPlugins: [remarkMath],
  rehypePlugins: [[rehypeKatex, { output: 'mathml' }], plainMathml],
});
const renderer = await markdown.createRenderer({ syntaxHighlight: false });
const html = async (text: string) => (await renderer.render(text)).code;

describe('plainMathml', () => {
  test('makes bold letters that MathML Core draws', async () => {
    expect(await html(String.raw`$\mathbf{t}$`)).toContain('<mi>𝐭</mi>');
    expect(boldLetter('a')).toBe('\u{1d41a}');
    expect(boldLetter('Z')).toBe('\u{1d419}');
    expect(boldLetter('θ')).toBe('θ');
  });

  test('drops the TeX source', async () => {
    expect(await html(String.raw`$\theta$`)).not.toContain('annotation');
  });

  test('spaces a function from what it is applied to', async () => {
    expect(await html(String.raw`$\cos\theta$`)).toMatch(/<mo rspace="0.1667em">\u2061<\/mo>/);
    expect(await html(String.raw`$2\cos\theta$`)).toContain('<mn>2</mn><mspace width="0.1667em"></mspace><mi>cos</mi>');
    expect(await html(String.raw`$-\cos\theta$`)).not.toContain('mspace');
  });

  test('ties a sign to its number after an equals sign and at the start, and nowhere else', async () => {
    expect(await html('$x = -3$')).toContain('<mo form="prefix">−</mo><mn>3</mn>');
    expect(await html('$-3$')).toContain('<mo form="prefix">−</mo>');
    expect(await html('$a - 3$')).toContain('<mo>−</mo>');
    expect(await html('$f(x) - 3$')).toContain('<mo>−</mo>');
  });

  test('closes the bars of a length up', async () => {
    expect(await html(String.raw`$\lVert v \rVert$`)).toContain('lspace="0" rspace="0">∥');
  });

  test('lets displayed formulas and code be reached by the keyboard, inline ones not', async () => {
    expect(await html('$$\nx\n$$')).toContain('tabindex="0"');
    expect(await html('```json\n{}\n```')).toContain('<pre tabindex="0"');
    expect(await html('$x$')).not.toContain('tabindex');
  });
});
