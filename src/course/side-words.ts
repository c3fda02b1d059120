/** Words after which "left" tells what has gone or stays, and "right" what is correct, not a side. */
const NO_SIDE_AFTER = 'has|have|had|is|are|was|were|be|been|you|they|it|what|that|nothing|anything|weight|lock';
const NO_SIDE = new RegExp(
  `\\b(?:${NO_SIDE_AFTER}) (?:left|right)\\b|\\bleft (?:behind|over|out|open|alone|so|as)\\b|\\bright (?:height|number|order|sign|answer)\\b`,
  'i',
);

/**
 * Texts of an exercise in which "left" or "right" is no side, where they stand, and the words. A structure that
 * reflects swaps the two in every text, so "has left its hinge" would read "has right its hinge".
 */
export function noSidesIn(value: unknown, place = ''): [place: string, words: string][] {
  if (typeof value === 'string') {
    const words = NO_SIDE.exec(value)?.[0];
    return words ? [[place, words]] : [];
  }
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => noSidesIn(inner, `${place}/${key}`));
}
