import type { Edit } from '../edit/draft.ts';

/** One thing to choose; `group` gathers those that belong together. */
export interface Option {
  readonly value: string;
  readonly says: string;
  readonly group?: string;
}

/**
 * A sentence is a run of pieces: words as they are, and words that can be changed where they stand. `label` is the
 * field's own name, for those who do not see the sentence around it.
 */
export type Piece =
  | { is: 'text'; text: string }
  | { is: 'name'; text: string }
  | {
      is: 'choice';
      label: string;
      value: string;
      options: readonly Option[];
      /** What is chosen is a name. */
      names?: boolean;
      edit: (value: string) => Edit;
    }
  | {
      is: 'number';
      label: string;
      value: number;
      unit: string;
      /** The unit is not written, because a later number of the row carries it. */
      quiet?: boolean;
      step: number;
      edit: (value: number) => Edit;
    }
  | { is: 'word'; label: string; value: string; edit: (value: string) => Edit }
  | { is: 'mark'; label: string; text: string; on: boolean; edit: (on: boolean) => Edit }
  | { is: 'pick'; label: string; text: string; options: readonly Option[]; edit: (value: string) => Edit }
  | {
      is: 'press';
      label: string;
      text: string;
      /** It changes nothing that is kept, so it stays in what is. */
      always?: boolean;
      /** It adds to the sentence, so it stands after its end. */
      last?: boolean;
      edit: Edit;
    }
  | { is: 'goto'; label: string; text: string; to: string };

export type Sentence = readonly Piece[];

export function text(words: string): Piece {
  return { is: 'text', text: words };
}

export function name(words: string): Piece {
  return { is: 'name', text: words };
}

export function plainOptions(values: readonly string[]): Option[] {
  return values.map((value) => ({ value, says: value }));
}

/** A number for reading: six significant digits, a true minus sign. */
export function numberText(value: number): string {
  return String(Number(value.toPrecision(6))).replace('-', '−');
}

/** What stands in a piece, as it is read aloud or printed. */
export function pieceText(piece: Piece): string {
  switch (piece.is) {
    case 'text':
    case 'name':
    case 'goto':
      return piece.text;
    case 'choice':
      return piece.options.find((option) => option.value === piece.value)?.says ?? piece.value;
    case 'number':
      return `${numberText(piece.value)}${piece.quiet ? '' : unitText(piece.unit)}`;
    case 'word':
      return piece.value;
    case 'mark':
      return piece.on ? piece.text : '';
    case 'pick':
    case 'press':
      return '';
  }
}

const UNIT_NAMES: Readonly<Record<string, string>> = { '°': 'degrees', m: 'metres' };

/** The name of a field of numbers: "rest length of mast, in metres". */
export function withUnit(label: string, unit: string): string {
  return unit ? `${label}, in ${UNIT_NAMES[unit] ?? unit}` : label;
}

/** The name of a button. It holds the words one sees, so that whoever speaks to the page can say them. */
export function spoken({ text, label }: { text: string; label: string }): string {
  return label.toLowerCase().includes(text.toLowerCase()) ? label : `${text}: ${label}`;
}

function unitText(unit: string): string {
  return unit === '' || unit === '°' ? unit : ` ${unit}`;
}

/** The sentence as plain words, without its buttons. */
export function sentenceText(sentence: Sentence): string {
  return sentence
    .map(pieceText)
    .join('')
    .replace(/\s+/g, ' ')
    .replace(/ ([.,;:])/g, '$1')
    .trim();
}

/** The sentence with what adds to it moved behind its end. */
export function offersLast(sentence: Sentence): Sentence {
  const isLast = (piece: Piece) => piece.is === 'press' && piece.last === true;
  const offers = sentence.filter(isLast);
  return [...sentence.filter((piece) => !isLast(piece)), ...offers.flatMap((offer) => [text(' '), offer])];
}

/** The sentence with nothing to change in it: for what an exercise keeps as it is. */
export function fixed(sentence: Sentence): Sentence {
  return sentence
    .filter((piece) => piece.is !== 'pick' && (piece.is !== 'press' || piece.always))
    .map((piece): Piece => {
      if (piece.is === 'text' || piece.is === 'goto' || piece.is === 'press') return piece;
      const named = piece.is === 'name' || piece.is === 'word' || (piece.is === 'choice' && piece.names);
      return { is: named ? 'name' : 'text', text: pieceText(piece) };
    });
}
