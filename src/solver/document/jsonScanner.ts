/** The single pieces of a JSON text (RFC 8259): blanks, strings, numbers, words; and where in the text they stand. */
import { refuse } from './reader.ts';
import { quoted } from './words.ts';

const NUMBER = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?/y;
const BLANKS = new Set([0x20, 0x09, 0x0a, 0x0d]);
const WORDS = { true: true, false: false, null: null } as const;
const ESCAPES = new Map([
  ['"', '"'],
  ['\\', '\\'],
  ['/', '/'],
  ['b', '\b'],
  ['f', '\f'],
  ['n', '\n'],
  ['r', '\r'],
  ['t', '\t'],
]);
const QUOTE = 0x22;
const BACKSLASH = 0x5c;
const FIRST_PRINTABLE = 0x20;

export class JsonScanner {
  readonly text: string;
  /** Index of the next character. */
  at = 0;

  constructor(text: string) {
    this.text = text;
  }

  /** `line 3, column 14`, both from 1; a column counts characters. */
  position(at = this.at): string {
    const lines = this.text.slice(0, at).split(/\r\n|\n|\r/);
    return `line ${lines.length}, column ${Array.from(lines.at(-1)!).length + 1}`;
  }

  unexpected(expected: string): never {
    const code = this.text.codePointAt(this.at);
    const found = code === undefined ? 'the end of the text' : quoted(String.fromCodePoint(code));
    return refuse(`${found} at ${this.position()}`, expected);
  }

  skipBlanks(): void {
    while (BLANKS.has(this.text.charCodeAt(this.at))) this.at++;
  }

  /** The next character that is not blank; '' at the end. */
  peek(): string {
    this.skipBlanks();
    return this.text[this.at] ?? '';
  }

  /** Whether the next character that is not blank is this one; if so, steps over it. */
  takes(character: string): boolean {
    if (this.peek() !== character) return false;
    this.at++;
    return true;
  }

  /** From an opening double quote to behind the closing one. */
  string(): string {
    let out = '';
    let start = ++this.at;
    for (;;) {
      const code = this.text.charCodeAt(this.at);
      if (code === QUOTE) break;
      if (code === BACKSLASH) {
        out += this.text.slice(start, this.at) + this.escape();
        start = this.at;
      } else if (code >= FIRST_PRINTABLE) this.at++;
      else this.unexpected('a closing double quote (line ends and other controls are written with a backslash)');
    }
    return out + this.text.slice(start, this.at++);
  }

  private escape(): string {
    const letter = this.text[this.at + 1] ?? '';
    const hex = this.text.slice(this.at + 2, this.at + 6);
    if (letter === 'u' && /^[0-9a-fA-F]{4}$/.test(hex)) {
      this.at += 6;
      return String.fromCharCode(Number.parseInt(hex, 16));
    }
    const character = ESCAPES.get(letter);
    if (character === undefined) {
      return this.unexpected('one of \\" \\\\ \\/ \\b \\f \\n \\r \\t, or \\u and four hex digits');
    }
    this.at += 2;
    return character;
  }

  number(): number {
    NUMBER.lastIndex = this.at;
    if (!NUMBER.test(this.text)) this.unexpected('a number');
    const digits = this.text.slice(this.at, NUMBER.lastIndex);
    this.at = NUMBER.lastIndex;
    return Number(digits);
  }

  word(): boolean | null {
    for (const [word, value] of Object.entries(WORDS)) {
      if (this.text.startsWith(word, this.at)) {
        this.at += word.length;
        return value;
      }
    }
    return this.unexpected('a value: an object, a list, a text in double quotes, a number, true, false or null');
  }
}
