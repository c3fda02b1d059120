import { type PointerEvent, type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import type { Vec3 } from '../../solver/document/rig.ts';
import type { Solved } from '../pose/solved.ts';
import { numberText } from '../sentence/piece.ts';
import { axesDrawing, tickStep } from './axes.ts';
import { frameAt, pointOf } from './boneFigure.ts';
import type { Drawing } from './drawing.ts';
import { endsOf, extentOf, sizeOf } from './extent.ts';
import { PlateGround } from './PlateGround.tsx';
import { PlateLabels } from './PlateLabels.tsx';
import type { Pixel } from './placeLabels.ts';
import { joined, rigDrawing } from './rigDrawing.ts';
import { useSize } from './useSize.ts';
import { ViewChoice } from './ViewChoice.tsx';
import { type Extent, FIRST_LOOK, type Look, project, type View, viewOf } from './view.ts';

interface Props {
  solved: Solved;
  /** What the plate shows, for those who do not see it. */
  label: string;
  chosen?: string | null;
  choose?: (bone: string) => void;
  /** Drawn over the rig: what should be. */
  over?: ((pixel: number, size: number) => Drawing) | null;
  /** Handles, drawn last, and where they stand. */
  handles?: { draw: (view: View) => ReactNode; places: (view: View) => readonly Pixel[] } | null;
  /** Whenever this changes to something, the plate is fitted to the pose as well. */
  fitTo?: string | null;
  look?: Look;
  /** Leaves the words for looking about out. */
  bare?: boolean;
}

const FIRST_SIZE = { width: 640, height: 410 };

/** A plate: the rig drawn on paper, with names, axes and handles, and the ways of looking at it. */
export function Plate({
  solved,
  label,
  chosen = null,
  choose,
  over,
  handles,
  fitTo = null,
  look: firstLook = FIRST_LOOK,
  bare,
}: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const size = useSize(frame, FIRST_SIZE);
  const [look, setLook] = useState(firstLook);
  const { extent, refit } = useExtent(solved, fitTo);
  const view = useMemo(() => viewOf(look, extent, size.width, size.height), [look, extent, size]);
  const drawing = useMemo(() => {
    const how = { pixel: 1 / view.scale, size: sizeOf(extent), chosen };
    return joined(axesDrawing(extent, view), rigDrawing(solved, how), over?.(how.pixel, how.size) ?? NOTHING);
  }, [solved, view, extent, chosen, over]);
  const box = `0 0 ${view.width} ${view.height}`;
  const turning = useTurning(look, setLook);

  function pick(event: PointerEvent<HTMLDivElement>) {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    const bone = nearestBone(solved, view, event.clientX - left, event.clientY - top);
    if (bone) choose?.(bone);
  }

  return (
    <div className="wb-plate">
      {/* A pointer's short way to what the words under the plate do by keyboard. */}
      <div
        className={look.view === 'free' ? 'wb-frame turns' : 'wb-frame'}
        ref={frame}
        onPointerDown={turning.down}
        onPointerMove={turning.move}
        onPointerUp={(event) => {
          if (!turning.up()) pick(event);
        }}
        onPointerCancel={turning.up}
      >
        <PlateGround drawing={drawing} view={view} solved={solved} label={label} />
        <svg className="wb-over" viewBox={box} aria-hidden="true">
          <PlateLabels labels={drawing.labels} view={view} handles={handles?.places(view) ?? []} />
        </svg>
        {handles && (
          // biome-ignore lint/a11y/noSvgWithoutTitle: it holds the handles, each with its own name
          <svg className="wb-over wb-handles" viewBox={box}>
            {handles.draw(view)}
          </svg>
        )}
      </div>
      {!bare && <ViewChoice look={look} setLook={setLook} refit={refit} tick={`${numberText(tickStep(view))} m`} />}
    </div>
  );
}

/** Fitted to the rig at rest, so that the plate does not move when the rig does; to a pose too where that is asked. */
function useExtent(solved: Solved, fitTo: string | null): { extent: Extent; refit: () => void } {
  const { mesh, bones } = solved.rig;
  // biome-ignore lint/correctness/useExhaustiveDependencies: only what the extent is made of
  const rest = useMemo(() => extentOf(solved.rig), [mesh, bones]);
  const [also, setAlso] = useState<readonly Vec3[]>([]);
  const latest = useRef(solved);
  latest.current = solved;
  useEffect(() => {
    if (fitTo !== null) setAlso(endsOf(latest.current));
  }, [fitTo]);
  const extent = useMemo(() => ({ ...rest, points: [...rest.points, ...also] }), [rest, also]);
  return { extent, refit: () => setAlso(endsOf(solved)) };
}

const NOTHING: Drawing = { figures: [], labels: [] };

/** In the free view, dragging the paper turns the view. Tells a drag from a click. */
function useTurning(look: Look, setLook: (look: Look) => void) {
  const from = useRef<{ x: number; y: number; look: Look; moved: boolean } | null>(null);
  return {
    down: (event: PointerEvent) => {
      if (event.button === 0) from.current = { x: event.clientX, y: event.clientY, look, moved: false };
    },
    move: (event: PointerEvent<HTMLDivElement>) => {
      const { current } = from;
      if (!current) return;
      const [dx, dy] = [event.clientX - current.x, event.clientY - current.y];
      if (!current.moved && Math.abs(dx) + Math.abs(dy) < 5) return;
      current.moved = true;
      if (look.view !== 'free') return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const rise = Math.min(90, Math.max(-90, Math.round(current.look.rise + dy * 0.4)));
      setLook({ ...look, round: wrapped(Math.round(current.look.round - dx * 0.5)), rise });
    },
    up: () => {
      const moved = from.current?.moved ?? true;
      from.current = null;
      return moved;
    },
  };
}

function wrapped(degrees: number): number {
  return ((((degrees + 180) % 360) + 360) % 360) - 180;
}

/** The bone whose line from base to tip passes nearest, within 16 pixels. */
function nearestBone({ rig, world }: Solved, view: View, x: number, y: number): string | null {
  let best: { bone: string; far: number } | null = null;
  for (const [i, bone] of rig.bones.entries()) {
    const frame = frameAt(world, i);
    const [ax, ay] = project(view, frame.base);
    const [bx, by] = project(view, pointOf(frame, 0, 0, bone.rest.length));
    const length = (bx - ax) ** 2 + (by - ay) ** 2;
    const t = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length));
    const far = Math.hypot(ax + t * (bx - ax) - x, ay + t * (by - ay) - y);
    if (far < 16 && (!best || far < best.far)) best = { bone: bone.name, far };
  }
  return best?.bone ?? null;
}
