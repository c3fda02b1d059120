import { type PointerEvent, type ReactNode, useMemo, useRef, useState } from 'react';
import type { Solved } from '../pose/solved.ts';
import { numberText } from '../sentence/piece.ts';
import { axesDrawing, tickStep } from './axes.ts';
import type { Drawing } from './drawing.ts';
import { sizeOf } from './extent.ts';
import { nearestBone } from './nearestBone.ts';
import { PlateGround } from './PlateGround.tsx';
import { PlateLabels } from './PlateLabels.tsx';
import type { Pixel } from './placeLabels.ts';
import { joined, rigDrawing } from './rigDrawing.ts';
import { useExtent } from './useExtent.ts';
import { useSize } from './useSize.ts';
import { useTurning } from './useTurning.ts';
import { ViewChoice } from './ViewChoice.tsx';
import { FIRST_LOOK, type View, viewOf } from './view.ts';

interface Props {
  solved: Solved;
  /** What the plate shows, for those who do not see it. */
  label: string;
  chosen?: string | null;
  choose?: (bone: string) => void;
  /** Drawn over the rig: what should be. */
  over?: ((pixel: number, size: number) => Drawing) | null;
  /** Handles, drawn last, where they stand, and the bone they hold. */
  handles?: { of: string; draw: (view: View) => ReactNode; places: (view: View) => readonly Pixel[] } | null;
  /** Whenever this changes to something, the plate is fitted to the pose as well. */
  fitTo?: string | null;
}

const FIRST_SIZE = { width: 640, height: 410 };

/** A plate: the rig drawn on paper, with names, axes and handles, and the ways of looking at it. */
export function Plate({ solved, label, chosen = null, choose, over, handles, fitTo = null }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const size = useSize(frame, FIRST_SIZE);
  const [look, setLook] = useState(FIRST_LOOK);
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
          // biome-ignore lint/a11y/useSemanticElements: a drawing has no fieldset
          <svg className="wb-over wb-handles" viewBox={box} role="group" aria-label={`Handles of ${handles.of}`}>
            {handles.draw(view)}
          </svg>
        )}
      </div>
      <ViewChoice look={look} setLook={setLook} refit={refit} tick={`${numberText(tickStep(view))} m`} />
    </div>
  );
}

const NOTHING: Drawing = { figures: [], labels: [] };
