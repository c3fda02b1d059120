import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { MovingPlate } from '../../src/workbench/MovingPlate.tsx';
import { TWIN_VANES } from './support/twinVanes.ts';

const sliders = [
  { label: 'Wind to the left', bone: 'wind_left', channel: 'move.x', min: -0.5, max: 0.5 },
  { label: 'Together', switch: 'wind.together', min: 0, max: 1 },
] as const;

test('a figure is a whole drawing before any script runs, with nothing that the pages’ policy forbids', () => {
  const caption = 'The left vane points at its own target.';
  const html = renderToStaticMarkup(<MovingPlate rig={TWIN_VANES} sliders={sliders} view="above" caption={caption} />);
  expect(html).toContain(`role="img" aria-label="${caption}"`);
  expect(html.match(/<path class="stroke/g)!.length).toBeGreaterThan(20);
  for (const name of ['vane_left', 'vane_right', 'wind_left']) expect(html).toContain(`>${name}</text>`);
  expect(html.match(/<input type="range" aria-label="(Wind to the left|Together)"/g)).toHaveLength(2);
  expect(html).not.toMatch(/ style="|<canvas|NaN/);
});

test('what a figure’s sliders say is what is drawn', () => {
  const drawn = (value: number) =>
    renderToStaticMarkup(
      <MovingPlate rig={TWIN_VANES} sliders={[{ ...sliders[0], value }]} view="above" caption="Vanes" />,
    );
  expect(drawn(0.3)).not.toBe(drawn(-0.3));
});
