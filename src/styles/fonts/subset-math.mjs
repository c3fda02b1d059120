// Makes stix-two-math.woff2 from the whole font: the letters, signs and stretchy brackets that lessons use, with
// the MATH table kept. Run it again when a formula needs a sign that is not here: node src/styles/fonts/subset-math.mjs
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import subsetFont from 'subset-font';

const here = dirname(fileURLToPath(import.meta.url));
const whole = join(here, '../../../node_modules/@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2');

/** Ranges of code points kept, first and last, with what they hold. */
const kept = [
  [0x20, 0x7e, 'Basic Latin'],
  [0xa0, 0xff, 'Latin-1'],
  [0x300, 0x30a, 'accents over letters'],
  [0x391, 0x3f6, 'Greek'],
  [0x2010, 0x205f, 'dashes and primes'],
  [0x2070, 0x209c, 'raised and lowered'],
  [0x20d7, 0x20d7, 'vector arrow'],
  [0x2102, 0x2135, 'letter-like signs'],
  [0x2190, 0x21ff, 'arrows'],
  [0x2200, 0x22ff, 'operators'],
  [0x2308, 0x230b, 'floor and ceiling'],
  [0x239b, 0x23ad, 'parts of tall brackets'],
  [0x23de, 0x23df, 'braces above and below'],
  [0x27e8, 0x27eb, 'angle brackets'],
  [0x1d400, 0x1d49b, 'bold, italic and bold italic letters'],
  [0x1d6a8, 0x1d755, 'bold, italic and bold italic Greek'],
];

const text = kept
  .flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)))
  .join('');
const subset = await subsetFont(readFileSync(whole), text, { targetFormat: 'woff2' });
writeFileSync(join(here, 'stix-two-math.woff2'), subset);
