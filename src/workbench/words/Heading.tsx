import { createContext, type ReactNode, useContext } from 'react';

/** The level of the heading above the workbench on its page. */
export const HeadingLevel = createContext(3);

/** A heading one level (rank 1) or two (rank 2) below that of the page around. */
export function Heading({ rank, id, children }: { rank: 1 | 2; id?: string; children: ReactNode }) {
  const level = Math.min(6, useContext(HeadingLevel) + rank);
  const Tag = `h${level}` as 'h4';
  return (
    <Tag id={id} className={`wb-heading-${rank}`}>
      {children}
    </Tag>
  );
}
