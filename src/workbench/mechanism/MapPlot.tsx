import { type PointerEvent, useRef } from 'react';
import type { Driver } from '../../solver/document/rig.ts';
import { setKey } from '../edit/maps.ts';
import { numberText } from '../sentence/piece.ts';
import { useBench } from '../state/bench.ts';
import { keyAt, plotOf } from './mapCurve.ts';
import { plotFrame } from './plotFrame.ts';

/** The map drawn by the solver's own arithmetic. Its keys can be dragged; the numbers beside it do the same. */
export function MapPlot({ driver, slot }: { driver: Driver; slot: string }) {
  const { edit } = useBench();
  const held = useRef<number | null>(null);
  const frame = useRef(plotFrame(driver.map));
  // While a key is dragged the plot keeps its size, whatever its labels say.
  if (held.current === null) frame.current = plotFrame(driver.map);
  const plot = plotOf(driver.map, frame.current);
  const { width, height } = plot.frame;

  function drag(event: PointerEvent<SVGSVGElement>) {
    if (held.current === null) return;
    const box = event.currentTarget.getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * width;
    const y = ((event.clientY - box.top) / box.height) * height;
    edit(setKey(driver.name, held.current, keyAt(plot, driver.map, held.current, x, y)), slot);
  }

  function hold(event: PointerEvent<SVGSVGElement>) {
    const key = Number((event.target as Element).getAttribute('data-key') ?? Number.NaN);
    if (Number.isNaN(key)) return;
    held.current = key;
    event.currentTarget.setPointerCapture(event.pointerId);
  }

  return (
    <svg
      className="wb-plot"
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={`Map of ${driver.name}: ${driver.map.keys.map(([x, y]) => `${numberText(x)} gives ${numberText(y)}`).join(', ')}`}
      onPointerDown={hold}
      onPointerMove={drag}
      onPointerUp={() => {
        held.current = null;
      }}
    >
      <path className="hair" d={plot.axes} />
      <path className="curve" d={plot.curve} />
      {plot.keys.map(([x, y], i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: keys have no identity but their place in the map
        <g key={i}>
          <circle className="key" cx={x} cy={y} r="3.5" />
          <circle className="grip" cx={x} cy={y} r="12" data-key={i} />
        </g>
      ))}
      {plot.labels.map(({ text, x, y, anchor }) => (
        <text key={`${x} ${y}`} x={x} y={y} textAnchor={anchor}>
          {text}
        </text>
      ))}
    </svg>
  );
}
