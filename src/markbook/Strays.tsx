import type { Book } from '../delivery/book/book.ts';
import { visible } from '../solver/document/words.ts';
import { refusalText } from './words.ts';

/** Files that are nobody's work, each with why. */
export function Strays({ book: { strays } }: { book: Book }) {
  if (strays.length === 0) return null;
  return (
    <details>
      <summary>
        {strays.length} {strays.length === 1 ? 'file is' : 'files are'} nobody’s work
      </summary>
      <ul>
        {strays.map(({ path, refusal }) => (
          <li key={path}>
            <bdi>{visible(path)}</bdi>. {refusalText(refusal)}
          </li>
        ))}
      </ul>
    </details>
  );
}
