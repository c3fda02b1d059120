import { expect, test } from 'vitest';
import { stylesFetchedBy, withoutStyles } from '../../src/course/site/late-styles.ts';

// As Vite 8 writes it at the head of a chunk that imports others later.
const script =
  'const __vite__mapDeps=(i,m=__vite__mapDeps,d=(m.f||(m.f=["./open.A1.js","./open.B2.css"])))=>i.map(i=>d[i]);import"./x.css";';

test('what a script fetches later is read off its list, and nothing else', () => {
  expect(stylesFetchedBy(script)).toEqual(['open.B2.css']);
  expect(stylesFetchedBy('import "./page.css"')).toEqual([]);
});

test('only those links go', () => {
  const html = '<link rel="stylesheet" href="/_astro/open.B2.css"><link rel="stylesheet" href="/_astro/page.css">';
  expect(withoutStyles(html, ['open.B2.css'])).toBe('<link rel="stylesheet" href="/_astro/page.css">');
});
