import { CompactSign, calculateJwkThumbprint, compactVerify, importJWK } from 'jose';
import { expect, test } from 'vitest';
import { makeKey, publicOf, readKeyPair, thumbprintOf, thumbprintText } from '../../../src/delivery/assignment/keys.ts';
import { readAssignmentText } from '../../../src/delivery/assignment/readAssignment.ts';
import { isSignedBy, partsOf, sign } from '../../../src/delivery/assignment/sign.ts';
import { fromBase64url } from '../../../src/delivery/base64url.ts';
import { assignmentOf } from '../support.ts';

/** RFC 8037, appendix A.1 and A.3, as public test suites of other implementations repeat them. */
const D = 'nWGxne_9WmC6hEr0kuwsxERJxWl7MmkZcDusAxyuf2A';
const X = '11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo';
const THUMBPRINT = 'kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k';
const pair = makeKey(fromBase64url(D)!);

test('the public half and the thumbprint of RFC 8037', async () => {
  expect(pair.x).toBe(X);
  expect(thumbprintOf(pair)).toBe(THUMBPRINT);
  expect(await calculateJwkThumbprint({ ...publicOf(pair) })).toBe(THUMBPRINT);
  expect(thumbprintText(pair).replaceAll(' ', '')).toBe(THUMBPRINT);
});

/** RFC 8037, appendix A.4, as public test suites of other implementations repeat it. */
test('the signature of RFC 8037', () => {
  const jws =
    'eyJhbGciOiJFZERTQSJ9.RXhhbXBsZSBvZiBFZDI1NTE5IHNpZ25pbmc.' +
    'hgyY0il_MGCjP0JzlnLWG1PPOt7-09PGcvMg3AIbQR6dWbhijcNR4ki4iylGjg5BhVsPt9g7sVvpAr_MuM0KAg';
  expect(isSignedBy(partsOf(jws)!, X)).toBe(true);
  expect(isSignedBy(partsOf(jws.replace('RXh', 'RXk'))!, X)).toBe(false);
});

test('signs as the jose library does, to the byte, and each reads the other', async () => {
  const signed = sign(assignmentOf(), pair);
  const parts = partsOf(signed)!;
  const key = await importJWK({ ...pair }, 'EdDSA');
  const theirs = await new CompactSign(parts.payload).setProtectedHeader({ alg: 'EdDSA', kid: THUMBPRINT }).sign(key);
  expect(signed).toBe(theirs);
  const verified = await compactVerify(signed, await importJWK({ ...publicOf(pair) }, 'EdDSA'));
  expect(verified.protectedHeader).toEqual({ alg: 'EdDSA', kid: THUMBPRINT });
  const read = readAssignmentText(theirs);
  expect(read.ok && read.value.signedBy).toBe(THUMBPRINT);
});

test('a pair is read back as it was; halves that do not belong together are refused', () => {
  const saved = JSON.parse(JSON.stringify(pair));
  expect(readKeyPair(saved)).toEqual({ ok: true, value: pair });
  const other = makeKey();
  const mixed = readKeyPair({ ...saved, x: other.x });
  expect(mixed).toMatchObject({ ok: false, refusal: { expected: 'the public half that belongs to d' } });
  expect(readKeyPair({ ...saved, crv: 'X25519' })).toMatchObject({ ok: false, refusal: { place: '/crv' } });
});

test('two new keys differ', () => {
  expect(makeKey().x).not.toBe(makeKey().x);
});
