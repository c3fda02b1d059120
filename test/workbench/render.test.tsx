import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import type { Pose } from '../../src/solver/index.ts';
import { Plate } from '../../src/workbench/plate/Plate.tsx';
import { ready, solved } from '../../src/workbench/pose/solved.ts';
import { TWIN_VANES } from './support/twinVanes.ts';

const LABEL = 'The left vane points at its own target.';

function drawn(pose: Pose): string {
  const made = ready(TWIN_VANES);
  if (!made.ok) throw new Error(made.cycle.join(' → '));
  return renderToStaticMarkup(<Plate solved={solved(made.ready, pose)} label={LABEL} />);
}

test('a plate is a whole drawing before WebGL is there, with nothing that the pages’ policy forbids', () => {
  const html = drawn({});
  expect(html).toContain(`role="img" aria-label="${LABEL}"`);
  expect(html.match(/<path class="stroke/g)!.length).toBeGreaterThan(20);
  for (const name of ['vane_left', 'vane_right', 'wind_left']) expect(html).toContain(`>${name}</text>`);
  expect(html).not.toMatch(/ style="|<canvas|NaN/);
});

test('the pose is what is drawn', () => {
  expect(drawn({ bones: { wind_left: { move: [0.3, 0, 0] } } })).not.toBe(drawn({}));
});
