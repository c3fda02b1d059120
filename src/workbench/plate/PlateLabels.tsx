import type { Label } from './drawing.ts';
import { type Pixel, placeLabels } from './placeLabels.ts';
import { textWidth } from './textWidth.ts';
import type { View } from './view.ts';

interface Props {
  labels: readonly Label[];
  view: View;
  handles: readonly Pixel[];
}

/** Names beside what they name. The pose table tells the same. */
export function PlateLabels({ labels, view, handles }: Props) {
  return (
    <g className="wb-labels">
      {placeLabels(labels, view, textWidth, handles).map(({ label, x, y }) => (
        <text
          key={`${label.of ?? label.text} ${label.rank}`}
          transform={`translate(${x} ${y})`}
          className={`${label.tone}${label.italic ? ' letter' : ''}`}
        >
          {label.text}
        </text>
      ))}
    </g>
  );
}
