import { describe, expect, test } from 'vitest';
import { fromThePage, fromTheSheet } from '../../src/course/site/portable.ts';

describe('fromThePage', () => {
  test.each([
    ['<a href="/contents/">', 'index.html', '/', '<a href="contents/index.html">'],
    ['<a href="/">', 'contents/index.html', '/', '<a href="../index.html">'],
    ['<a href="/glossary/#bone">', 'lessons/1.1-x/index.html', '/', '<a href="../../glossary/index.html#bone">'],
    ['<a href="/course/glossary/">', 'motion/index.html', '/course/', '<a href="../glossary/index.html">'],
    ['<script src="/theme.js">', 'lessons/1.1-x/index.html', '/', '<script src="../../theme.js">'],
    ['<html data-root="/">', 'lessons/1.1-x/index.html', '/', '<html data-root="../../">'],
    ['<html data-root="/">', 'index.html', '/', '<html data-root="./">'],
  ])('%s in %s under %s', (html, page, base, expected) => {
    expect(fromThePage(html, page, base)).toBe(expected);
  });

  test.each([
    '<a href="https://example.org/a">',
    '<a href="//example.org/a">',
    '<a href="#card">',
    '<a href="other.html">',
  ])('leaves %s', (html) => {
    expect(fromThePage(html, 'contents/index.html', '/')).toBe(html);
  });
});

test('fromTheSheet makes the fonts of a style sheet relative to it', () => {
  expect(fromTheSheet('src:url(/_astro/a.woff2)', '_astro/page.css', '/')).toBe('src:url(a.woff2)');
  expect(fromTheSheet('src:url("/c/_astro/a.woff2")', '_astro/page.css', '/c/')).toBe('src:url(a.woff2)');
  expect(fromTheSheet('fill:url(data:x)', '_astro/page.css', '/')).toBe('fill:url(data:x)');
});
