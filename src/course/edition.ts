import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalJson } from './canonical-json.ts';

/** The edition of an exercise: the first 16 hex digits of SHA-256 over its canonical JSON. */
export function editionOf(definition: unknown): string {
  return bytesToHex(sha256(utf8ToBytes(canonicalJson(definition)))).slice(0, 16);
}

/** The edition of a whole course: that of its exercises' editions. */
export function courseEdition(editions: readonly string[]): string {
  return editionOf([...editions].sort());
}
