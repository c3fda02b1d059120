import { ed25519 } from '@noble/curves/ed25519.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalJson } from '../../course/canonical-json.ts';
import { type Reader, reading, refuseValue } from '../../solver/document/reader.ts';
import type { Reading } from '../../solver/document/refusal.ts';
import { needed, record } from '../../solver/document/structures.ts';
import { exactly } from '../../solver/document/values.ts';
import { base64url, fromBase64url } from '../base64url.ts';
import type { KeyPair, PublicKey } from './assignment.ts';

const BYTES = 32;

/** A new key pair (Ed25519, RFC 8032). The secret is random: from the machine's own source where none is given. */
export function makeKey(secret: Uint8Array = ed25519.utils.randomSecretKey()): KeyPair {
  const x = base64url(ed25519.getPublicKey(secret));
  return { kty: 'OKP', crv: 'Ed25519', x, d: base64url(secret) };
}

/** The half that may be shown. */
export const publicOf = ({ kty, crv, x }: PublicKey): PublicKey => ({ kty, crv, x });

/** RFC 7638, with the members that RFC 8037 names for OKP: SHA-256, base64url. */
export const thumbprintOf = (key: PublicKey): string => base64url(sha256(utf8ToBytes(canonicalJson(publicOf(key)))));

/** The thumbprint in groups of four, to be compared by eye. */
export const thumbprintText = (key: PublicKey): string =>
  thumbprintOf(key)
    .match(/.{1,4}/g)!
    .join(' ');

const thirtyTwoBytes: Reader<string> = (value) => {
  const bytes = typeof value === 'string' ? fromBase64url(value) : null;
  return bytes?.length === BYTES ? (value as string) : refuseValue(value, `${BYTES} bytes in base64url`);
};

const half = { kty: needed(exactly('OKP')), crv: needed(exactly('Ed25519')), x: needed(thirtyTwoBytes) };

export const publicKey: Reader<PublicKey> = record<PublicKey>('a public key', half);

const pair: Reader<KeyPair> = (value) => {
  const read = record<KeyPair>('a key pair', { ...half, d: needed(thirtyTwoBytes) })(value, null);
  const own = makeKey(fromBase64url(read.d)!).x;
  return own === read.x ? read : refuseValue(read.x, 'the public half that belongs to d');
};

/** Reads a key pair that was saved. */
export const readKeyPair = (value: unknown): Reading<KeyPair> => reading(() => pair(value, null));
