/** A running 64-bit FNV-1a hash (Fowler, Noll and Vo; constants from memory) over doubles to the bit, and over text. */
export interface BitHash {
  /** The eight bytes of each, least first; +0 and −0 differ. */
  addNumbers(numbers: readonly number[]): void;
  addText(text: string): void;
  /** Sixteen hexadecimal digits. */
  digest(): string;
}

const OFFSET = 0xcbf29ce484222325n;
const PRIME = 0x100000001b3n;

export function bitHash(): BitHash {
  let hash = OFFSET;
  const view = new DataView(new ArrayBuffer(8));
  const addByte = (byte: number) => {
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * PRIME);
  };
  return {
    addNumbers(numbers) {
      for (const number of numbers) {
        view.setFloat64(0, number, true);
        for (let i = 0; i < 8; i++) addByte(view.getUint8(i));
      }
    },
    addText(text) {
      for (const byte of new TextEncoder().encode(text)) addByte(byte);
    },
    digest: () => hash.toString(16).padStart(16, '0'),
  };
}
