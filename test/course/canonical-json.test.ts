import { expect, test } from 'vitest';
import { canonicalJson } from '../../src/course/canonical-json.ts';

/** RFC 8785, section 3.2.2 and 3.2.3 (from memory). */
test('the example of RFC 8785', () => {
  const value = JSON.parse(
    '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],' +
      String.raw`"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`,
  );
  expect(canonicalJson(value)).toBe(
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
      String.raw`"string":"€$\u000f\nA'B\"\\\\\"/"}`,
  );
});

/** RFC 8785, section 3.2.3: sorted by UTF-16 code units (from memory). */
test('the order of keys of RFC 8785', () => {
  const names = { '\u20ac': 'Euro Sign', '\r': 'Carriage Return', '\ufb33': 'Hebrew Letter', '1': 'One' };
  const more = { '\u0080': 'Control', '\ud83d\ude00': 'Emoji', '\u00f6': 'Latin Small Letter O' };
  const values = Object.values(JSON.parse(canonicalJson({ ...names, ...more })));
  expect(canonicalJson({ ...names, ...more }).match(/:"[^"]*"/g)).toHaveLength(7);
  const written = canonicalJson({ ...names, ...more })
    .match(/:"([^"]*)"/g)!
    .map((text) => text.slice(2, -1));
  expect(written).toEqual([
    'Carriage Return',
    'One',
    'Control',
    'Latin Small Letter O',
    'Euro Sign',
    'Emoji',
    'Hebrew Letter',
  ]);
  expect(values).toHaveLength(7);
});

/** RFC 8785, appendix B: numbers as ECMAScript writes them (from memory). */
test.each([
  [0, '0'],
  [-0, '0'],
  [5e-324, '5e-324'],
  [1.7976931348623157e308, '1.7976931348623157e+308'],
  [9007199254740992, '9007199254740992'],
  [295147905179352830000, '295147905179352830000'],
  [1e21, '1e+21'],
  [1e-7, '1e-7'],
])('%d is written %s', (value, written) => {
  expect(canonicalJson(value)).toBe(written);
});
