import { expect, test } from 'vitest';
import { plainText } from '../../src/course/search/plainText.ts';

test('the words of a lesson stay, its components, drawings and formulas go', () => {
  const source = `The <Term id="vane">vane</Term> turns by $\\theta$.

<Plate n={1} caption="From above.">
  <Figure view={[0, 0, 1, 1]} alt="A vane."><Label at={[1, 2]}>base</Label></Figure>
</Plate>
\`\`\`json
{ "not": "this" }
\`\`\``;
  expect(plainText(source)).toBe('The vane turns by . From above. A vane.');
});
