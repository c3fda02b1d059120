import type { Label } from './drawing.ts';
import { placeLabels } from './placeLabels.ts';
import { textWidth } from './textWidth.ts';
import type { View } from './view.ts';

/** Names beside what they name. The pose table tells the same. */
export function PlateLabels({ labels, view }: { labels: readonly Label[]; view: View }) {
  return (
    <g className="wb-labels">
      {placeLabels(labels, view, textWidth).map(({ label, x, y }) => (
        <text
          key={`${label.text} ${label.rank}`}
          x={x}
          y={y}
          className={`${label.tone}${label.italic ? ' letter' : ''}`}
        >
          {label.text}
        </text>
      ))}
    </g>
  );
}
