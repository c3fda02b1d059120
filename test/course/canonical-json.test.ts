import { expect, test } from 'vitest';
import { canonicalJson } from '../../src/course/canonical-json.ts';

/**
 * RFC 8785, section 3.2.2 and 3.2.3 (from memory; the files values.json of the authors' own test data, at
 * github.com/cyberphone/json-canonicalization, hold the same numbers and the same string in another order).
 */
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

/** RFC 8785, section 3.2.3: sorted by UTF-16 code units, in the order that public test suites of other implementations repeat. */
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

/** RFC 8785, appendix B: numbers by their IEEE 754 bits, as public test suites of other implementations repeat them. */
test.each([
  ['0000000000000000', '0'],
  ['8000000000000000', '0'],
  ['0000000000000001', '5e-324'],
  ['8000000000000001', '-5e-324'],
  ['7fefffffffffffff', '1.7976931348623157e+308'],
  ['ffefffffffffffff', '-1.7976931348623157e+308'],
  ['4340000000000000', '9007199254740992'],
  ['c340000000000000', '-9007199254740992'],
  ['4430000000000000', '295147905179352830000'],
  ['44b52d02c7e14af5', '9.999999999999997e+22'],
  ['44b52d02c7e14af6', '1e+23'],
  ['44b52d02c7e14af7', '1.0000000000000001e+23'],
  ['444b1ae4d6e2ef4e', '999999999999999700000'],
  ['444b1ae4d6e2ef4f', '999999999999999900000'],
  ['444b1ae4d6e2ef50', '1e+21'],
  ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
  ['3eb0c6f7a0b5ed8d', '0.000001'],
  ['41b3de4355555553', '333333333.3333332'],
  ['41b3de4355555554', '333333333.33333325'],
  ['41b3de4355555555', '333333333.3333333'],
  ['41b3de4355555556', '333333333.3333334'],
  ['41b3de4355555557', '333333333.33333343'],
  ['becbf647612f3696', '-0.0000033333333333333333'],
  ['43143ff3c1cb0959', '1424953923781206.2'],
])('the number with the bits %s is written %s', (bits, written) => {
  const number = new DataView(BigUint64Array.of(BigInt(`0x${bits}`)).buffer).getFloat64(0, true);
  expect(canonicalJson(number)).toBe(written);
});
