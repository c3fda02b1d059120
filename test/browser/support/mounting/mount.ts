/** A page's script that puts workbenches into the page and takes them away again, as nothing in the course does. */
import { createElement } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { Workbench } from '../../../../src/workbench/Workbench.tsx';

let roots: Root[] = [];

export function mount(exercise: string, count: number): void {
  roots = Array.from({ length: count }, () => {
    const place = document.body.appendChild(document.createElement('div'));
    const root = createRoot(place);
    root.render(createElement(Workbench, { exercise, base: '../' }));
    return root;
  });
}

export function unmount(): void {
  for (const root of roots) root.unmount();
  document.body.replaceChildren();
  roots = [];
}
