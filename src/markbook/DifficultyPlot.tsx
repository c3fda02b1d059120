import {
  BarController,
  BarElement,
  CategoryScale,
  Chart,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
  Tooltip,
} from 'chart.js';
import { useEffect, useRef } from 'react';
import type { ItemAnalysis } from '../delivery/analysis/analyse.ts';

Chart.register(
  BarController,
  BarElement,
  CategoryScale,
  LineController,
  LineElement,
  LinearScale,
  PointElement,
  Tooltip,
);

/** Mean marks, each a point in the bar of its interval. The table beneath says the same. */
export function DifficultyPlot({ items }: { items: readonly ItemAnalysis[] }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const ink = getComputedStyle(canvas.current!).color;
    const chart = new Chart<'bar' | 'line', (number | [number, number])[]>(canvas.current!, {
      data: {
        labels: items.map(({ exercise }) => exercise),
        datasets: [
          {
            type: 'bar',
            label: '95 % interval',
            data: items.map(({ difficultyInterval }) => toPercent(difficultyInterval ?? [0, 0])),
            backgroundColor: 'transparent',
            borderColor: ink,
            borderWidth: 1,
            borderSkipped: false,
            barThickness: 12,
          },
          {
            type: 'line',
            label: 'mean mark',
            data: items.map(({ difficulty }) => 100 * (difficulty ?? 0)),
            showLine: false,
            backgroundColor: ink,
            pointRadius: 4,
          },
        ],
      },
      options: {
        indexAxis: 'y',
        animation: false,
        maintainAspectRatio: false,
        color: ink,
        scales: {
          x: {
            min: 0,
            max: 100,
            ticks: { color: ink },
            title: { display: true, text: 'mean mark, per cent', color: ink },
          },
          y: { ticks: { color: ink } },
        },
      },
    });
    return () => chart.destroy();
  }, [items]);
  const height = `${4 + items.length * 2}rem`;
  return (
    <div className="mb-plot" style={{ blockSize: height }}>
      <canvas
        ref={canvas}
        role="img"
        aria-label="Mean mark of each exercise with its interval; the table beneath has the numbers"
      />
    </div>
  );
}

const toPercent = ([low, high]: readonly [number, number]): [number, number] => [100 * low, 100 * high];
