import { createRoot } from 'react-dom/client';
import { Workbench } from '../../workbench/Workbench.tsx';
import { seedIn } from './seed-in-address.ts';
import { tellVariant } from './tell-variant.ts';

/**
 * Puts the workbench of an exercise into the page, in the place kept for it. Where the address of the page asks for a
 * variant ("?seed=5"), it is that one, and the page tells of it too.
 */
export function openWorkbench(place: HTMLElement, exercise: string): void {
  const seed = place.dataset.seedFrom === 'address' ? seedIn(location.search) : 0;
  const root = createRoot(place);
  if (seed === 0) root.render(<Workbench exercise={exercise} />);
  else root.render(<Workbench exercise={exercise} seed={seed} tell={tellVariant} />);
}
