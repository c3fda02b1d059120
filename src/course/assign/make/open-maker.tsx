import { createRoot } from 'react-dom/client';
import { fetchJson } from '../course-root.ts';
import type { Offer } from '../offered.ts';
import { Maker } from './Maker.tsx';

/** Puts the form into its place, once the list of exercises is there. */
export async function openMaker(place: HTMLElement): Promise<void> {
  const offer = await fetchJson<Offer>('assignment.json');
  createRoot(place).render(<Maker offer={offer} />);
}
