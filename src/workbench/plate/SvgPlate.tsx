import type { Drawing, Figure, Stroke } from './drawing.ts';
import { project, type View } from './view.ts';

interface Props {
  drawing: Drawing;
  view: View;
  /** The skinned mesh: path data of its faces, and the edges drawn on them. */
  wash: string | null;
  edges: readonly Stroke[];
}

/** The plate as a plain drawing: the same leaves and strokes, the farther ones first. */
export function SvgPlate({ drawing, view, wash, edges }: Props) {
  const figures = drawing.figures
    .map((figure) => ({ figure, near: project(view, figure.at)[2] }))
    .sort((a, b) => a.near - b.near);
  return (
    <>
      {wash && <path className="wash" d={wash} />}
      {edges.length > 0 && (
        <path {...strokeLook(edges[0]!)} d={edges.map(({ points }) => pathOf(points, view)).join('')} />
      )}
      {figures.map(({ figure }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: drawn anew each time, nothing is kept from one to the next
        <FigureView key={i} figure={figure} view={view} />
      ))}
    </>
  );
}

function FigureView({ figure, view }: { figure: Figure; view: View }) {
  return (
    <g>
      {figure.leaves.map((leaf, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: as above
        <path key={i} className="leaf" d={`${pathOf(leaf.points, view)}Z`} />
      ))}
      {figure.strokes.map((stroke, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: as above
        <path key={i} {...strokeLook(stroke)} d={pathOf(stroke.points, view)} />
      ))}
    </g>
  );
}

function strokeLook({ tone, width, dash }: Stroke) {
  return { className: `stroke ${tone}${dash === 'none' ? '' : ` ${dash}`}`, strokeWidth: width };
}

function pathOf(points: Stroke['points'], view: View): string {
  return points
    .map((point, i) => {
      const [x, y] = project(view, point);
      return `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`;
    })
    .join('');
}
