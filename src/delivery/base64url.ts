/** RFC 4648, section 5, without padding. */
const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

export function base64url(bytes: Uint8Array): string {
  let out = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const group = (bytes[i]! << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    const digits = [group >> 18, (group >> 12) & 63, (group >> 6) & 63, group & 63];
    const count = Math.min(bytes.length - i, 3) + 1;
    for (const digit of digits.slice(0, count)) out += DIGITS[digit];
  }
  return out;
}

/** Null where it is none: another character, a length that cannot be, or bits left over. */
export function fromBase64url(text: string): Uint8Array | null {
  if (!/^[A-Za-z0-9_-]*$/.test(text) || text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let held = 0;
  let bits = 0;
  let at = 0;
  for (const digit of text) {
    held = ((held << 6) | DIGITS.indexOf(digit)) & 0xfff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[at++] = (held >> bits) & 0xff;
  }
  return (held & ((1 << bits) - 1)) === 0 ? bytes : null;
}
