import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Solved } from '../pose/solved.ts';
import type { Drawing } from './drawing.ts';
import { meshStrokes, meshWash } from './meshLines.ts';
import { SvgPlate } from './SvgPlate.tsx';
import { onTonesChange, type Tones, tonesAt } from './tones.ts';
import { usePlateScene } from './usePlateScene.ts';
import { usePosedMesh } from './usePosedMesh.ts';
import type { View } from './view.ts';

interface Props {
  drawing: Drawing;
  view: View;
  solved: Solved;
  label: string;
}

/** What is drawn on the paper, under names and handles: by WebGL where there is some, else as a plain drawing. */
export function PlateGround({ drawing, view, solved, label }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const painter = usePlateScene();
  const theme = useTheme();
  const tones = useRef<{ theme: number; tones: Tones } | null>(null);
  const skinned = usePosedMesh(solved);
  const edges = useMemo(() => (skinned ? meshStrokes(skinned, view) : []), [skinned, view]);
  const painting = painter !== null && !painter.isLost;

  useLayoutEffect(() => {
    const { current } = canvas;
    if (!current || !painting) return;
    const ratio = Math.min(3, window.devicePixelRatio || 1);
    resize(current, Math.round(view.width * ratio), Math.round(view.height * ratio));
    // Reading colours off the page is dear, so it is done once for each theme.
    if (tones.current?.theme !== theme) tones.current = { theme, tones: tonesAt(current) };
    painter.scene.draw(drawing, view, skinned && { ...skinned, edges }, tones.current.tones, current);
  }, [painter, painting, drawing, view, skinned, edges, theme]);

  if (painting) return <canvas ref={canvas} className="wb-canvas" role="img" aria-label={label} />;
  return (
    <svg className="wb-drawing" viewBox={`0 0 ${view.width} ${view.height}`} role="img" aria-label={label}>
      <SvgPlate drawing={drawing} view={view} wash={skinned ? meshWash(skinned, view) : null} edges={edges} />
    </svg>
  );
}

/** Counts the changes of the page's colours. */
function useTheme(): number {
  const [count, setCount] = useState(0);
  useEffect(() => onTonesChange(() => setCount((n) => n + 1)), []);
  return count;
}

function resize(canvas: HTMLCanvasElement, width: number, height: number): void {
  if (canvas.width === width && canvas.height === height) return;
  canvas.width = width;
  canvas.height = height;
}
