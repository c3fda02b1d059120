import { createHmac } from 'node:crypto';
import { hmac } from '@noble/hashes/hmac.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { seedAttempt, seedOf } from '../../../src/delivery/variant/seed.ts';

/** RFC 4231, test cases 1, 2, 3 and 6 (a key longer than a block), as public test suites of other implementations repeat them. */
test.each([
  [
    '1',
    new Uint8Array(20).fill(0x0b),
    utf8ToBytes('Hi There'),
    'b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7',
  ],
  [
    '2',
    utf8ToBytes('Jefe'),
    utf8ToBytes('what do ya want for nothing?'),
    '5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843',
  ],
  [
    '3',
    new Uint8Array(20).fill(0xaa),
    new Uint8Array(50).fill(0xdd),
    '773ea91e36800e46854db8ebd09181a72959098b3ef8c122d9635514ced565fe',
  ],
  [
    '6',
    new Uint8Array(131).fill(0xaa),
    utf8ToBytes('Test Using Larger Than Block-Size Key - Hash Key First'),
    '60e431591ee0b67f0d8a26aacbf5b77f8e0bc6213728c5140546040f0ee37f54',
  ],
])('the library has the HMAC of RFC 4231, case %s', (_, key, message, mac) => {
  expect(bytesToHex(hmac(sha256, key, message))).toBe(mac);
});

test('a seed is the first six bytes, whoever computes the HMAC', () => {
  fc.assert(
    fc.property(fc.string(), fc.string(), fc.string(), fc.nat(50), (assignment, learner, exercise, attempt) => {
      const mac = createHmac('sha256', assignment).update(`${learner}\n${exercise}\n${attempt}`).digest();
      expect(seedOf(assignment, learner, exercise, attempt)).toBe(mac.readUIntBE(0, 6));
    }),
    { seed: 3 },
  );
});

test('only what is drawn anew takes the attempt into its seed', () => {
  expect(seedAttempt('build', 4)).toBe(1);
  expect(seedAttempt('predict', 4)).toBe(4);
});
