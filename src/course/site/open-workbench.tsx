import { createRoot } from 'react-dom/client';
import { Workbench } from '../../workbench/Workbench.tsx';

/** Puts the workbench of an exercise into the page, in the place kept for it. */
export function openWorkbench(place: HTMLElement, exercise: string): void {
  createRoot(place).render(<Workbench exercise={exercise} />);
}
