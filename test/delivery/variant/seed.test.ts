import { createHmac } from 'node:crypto';
import { hmac } from '@noble/hashes/hmac.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { seedAttempt, seedOf } from '../../../src/delivery/variant/seed.ts';

/** RFC 4231, test case 2 (from memory). */
test('the library has the HMAC of RFC 4231', () => {
  expect(bytesToHex(hmac(sha256, utf8ToBytes('Jefe'), utf8ToBytes('what do ya want for nothing?')))).toBe(
    '5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843',
  );
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
