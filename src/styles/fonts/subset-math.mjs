// Makes stix-two-math.woff2 from the whole font, with the MATH table and its stretchy brackets kept. Run it again when
// kept-signs.ts has changed: npx node src/styles/fonts/subset-math.mjs
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import subsetFont from 'subset-font';
import { keptSigns } from './kept-signs.ts';

const here = dirname(fileURLToPath(import.meta.url));
const whole = join(here, '../../../node_modules/@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2');

const text = keptSigns
  .flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)))
  .join('');
const subset = await subsetFont(readFileSync(whole), text, { targetFormat: 'woff2' });
writeFileSync(join(here, 'stix-two-math.woff2'), subset);
