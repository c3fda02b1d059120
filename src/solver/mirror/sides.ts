/** How names say on which side something is: a side word, first or last among the words between underscores. */
export interface SideWords {
  left: string;
  right: string;
  at: 'first' | 'last';
}

export type Side = 'left' | 'right';

/** `eye_left`, `eye_right`: the naming where a house sheet says nothing else. */
export const LAST_WORD: SideWords = { left: 'left', right: 'right', at: 'last' };

export const otherSide = (side: Side): Side => (side === 'left' ? 'right' : 'left');

function endsIn(name: string, word: string, at: SideWords['at']): boolean {
  if (name === word) return true;
  return at === 'last' ? name.endsWith(`_${word}`) : name.startsWith(`${word}_`);
}

/** The side that a name says, or null: `eye_left` is left, `jaw` and `leftover` are neither. */
export function sideOf(name: string, words: SideWords = LAST_WORD): Side | null {
  if (endsIn(name, words.left, words.at)) return 'left';
  return endsIn(name, words.right, words.at) ? 'right' : null;
}

/** The name with its side word exchanged; a name without one as it is. */
export function swapSide(name: string, words: SideWords = LAST_WORD): string {
  const side = sideOf(name, words);
  if (side === null) return name;
  const [from, to] = [words[side], words[otherSide(side)]];
  return words.at === 'last' ? name.slice(0, -from.length) + to : to + name.slice(from.length);
}

/** A name without a side word, given one: `let_go` on the left is `let_go_left`. */
export function onSide(name: string, side: Side, words: SideWords = LAST_WORD): string {
  return words.at === 'last' ? `${name}_${words[side]}` : `${words[side]}_${name}`;
}
