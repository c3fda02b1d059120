import { describe, expect, test } from 'vitest';
import { brokenLinks } from '../../src/course/site/whole-links.ts';

const files = new Set(['index.html', 'lessons/1.1-bones/index.html', '_astro/page.css']);
const check = (html: string, page = 'lessons/1.1-bones/index.html') =>
  brokenLinks(
    new Map([
      ['index.html', '<h1 id="top">Counterpose</h1>'],
      [page, html],
    ]),
    files,
  );

describe('brokenLinks passes', () => {
  test.each([
    ['a page', '<a href="../../index.html">'],
    ['a folder', '<a href="../../">'],
    ['a place on another page', '<a href="../../index.html#top">'],
    ['a place on this page', '<p id="card"><a href="#card">'],
    ['a style sheet', '<link rel="stylesheet" href="../../_astro/page.css">'],
    ['another site', '<a href="https://www.w3.org/TR/WCAG22/#x">'],
    ['a word that opens', '<button popovertarget="word-tip"></button><div popover id="word-tip"></div>'],
  ])('%s', (_, html) => {
    expect(check(html)).toEqual([]);
  });
});

describe('brokenLinks finds', () => {
  test.each([
    ['a page that is not there', '<a href="../1.2-parents/index.html">', /1\.2-parents.*no such file/],
    ['a place that is not there', '<a href="../../index.html#bottom">', /#bottom.*no such place/],
    ['a place that is not on this page', '<a href="#card">', /#card.*no such place/],
    ['a picture that is not there', '<img src="crane.png">', /crane\.png.*no such file/],
    ['a word without a note', '<button popovertarget="word-tip"></button>', /word-tip.*no such place/],
    ['two things of one id', '<p id="a"></p><p id="a"></p>', /two things have the id "a"/],
  ])('%s', (_, html, message) => {
    expect(check(html)).toEqual([expect.stringMatching(message)]);
  });
});
