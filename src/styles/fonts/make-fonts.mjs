// Makes the fonts of this folder from the whole ones: the signs that lessons use, and of Literata the weights that
// the pages use. Run it again when kept-signs.ts has changed: npx node src/styles/fonts/make-fonts.mjs
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import subsetFont from 'subset-font';
import { keptLetters, keptSigns } from './kept-signs.ts';

const here = dirname(fileURLToPath(import.meta.url));
const packages = join(here, '../../../node_modules');
const literata = '@fontsource-variable/literata/files/literata-latin-wght';
const stix = '@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2';

const textOf = (ranges) =>
  ranges
    .flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)))
    .join('');

async function make(name, source, ranges, variationAxes) {
  const whole = readFileSync(join(packages, source));
  const options = { targetFormat: 'woff2', ...(variationAxes && { variationAxes }) };
  writeFileSync(join(here, name), await subsetFont(whole, textOf(ranges), options));
}

await make('stix-two-math.woff2', stix, keptSigns);
await make('literata.woff2', `${literata}-normal.woff2`, keptLetters, { wght: { min: 300, max: 600, default: 400 } });
await make('literata-italic.woff2', `${literata}-italic.woff2`, keptLetters, { wght: 400 });
