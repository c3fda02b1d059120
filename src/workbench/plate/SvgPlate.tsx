import type { Drawing, Figure, Stroke } from './drawing.ts';
import type { MeshLines } from './meshLines.ts';
import { project, type View } from './view.ts';

interface Props {
  drawing: Drawing;
  view: View;
  mesh: MeshLines | null;
}

/** The plate as a plain drawing: the same leaves and strokes, the farther ones first. */
export function SvgPlate({ drawing, view, mesh }: Props) {
  const figures = drawing.figures
    .map((figure) => ({ figure, near: project(view, figure.at)[2] }))
    .sort((a, b) => a.near - b.near);
  return (
    <>
      {mesh && (
        <g className="wb-skin">
          <path className="wash" d={mesh.wash} />
          <path className="edge" d={mesh.edges} />
        </g>
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
