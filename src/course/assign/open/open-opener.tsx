import { createRoot } from 'react-dom/client';
import { Opener } from './Opener.tsx';

/** Puts what opens assignments into its place. */
export function openOpener(place: HTMLElement): void {
  createRoot(place).render(<Opener />);
}
