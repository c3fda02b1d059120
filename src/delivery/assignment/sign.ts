import { ed25519 } from '@noble/curves/ed25519.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalJson } from '../../course/canonical-json.ts';
import { base64url, fromBase64url } from '../base64url.ts';
import type { Assignment, KeyPair } from './assignment.ts';
import { publicOf, thumbprintOf } from './keys.ts';

/*
 * A JWS (RFC 7515) with EdDSA (RFC 8037) over canonical JSON (RFC 8785). Made here and not by a library of the platform's
 * own cryptography, because that is missing on pages that come over plain http; the tests check it with such a library.
 */

/** Signs an assignment: header, payload and signature, each in base64url, joined by dots. The key goes in with it. */
export function sign(assignment: Assignment, pair: KeyPair): string {
  const header = { alg: 'EdDSA', kid: thumbprintOf(pair) };
  const parts = [header, { ...assignment, key: publicOf(pair) }].map((part) =>
    base64url(utf8ToBytes(canonicalJson(part))),
  );
  const signature = ed25519.sign(utf8ToBytes(parts.join('.')), fromBase64url(pair.d)!);
  return [...parts, base64url(signature)].join('.');
}

export interface SignedParts {
  header: Uint8Array;
  payload: Uint8Array;
  signature: Uint8Array;
  /** What was signed. */
  signed: Uint8Array;
}

/** The parts of a JWS; null where the text is none. */
export function partsOf(text: string): SignedParts | null {
  const parts = text.trim().split('.');
  if (parts.length !== 3) return null;
  const [header, payload, signature] = parts.map(fromBase64url);
  if (!header || !payload || !signature) return null;
  return { header, payload, signature, signed: utf8ToBytes(`${parts[0]}.${parts[1]}`) };
}

/** Whether the signature is that of the key's owner. */
export function isSignedBy({ signature, signed }: SignedParts, x: string): boolean {
  const key = fromBase64url(x);
  try {
    return key !== null && ed25519.verify(signature, signed, key, { zip215: false });
  } catch {
    return false;
  }
}
