import { useRef } from 'react';
import { useBench } from '../state/bench.ts';
import type { Strip } from './strip.ts';
import { useInWindow } from './useInWindow.ts';
import { usePlayer } from './usePlayer.ts';

interface Props {
  /** What is played: "Probes". */
  name: string;
  strip: Strip;
  speed: number;
}

/** Buttons and a slider along a strip of poses. */
export function PlayLine({ name, strip, speed }: Props) {
  const { dispatch } = useBench();
  const { place, isPlaying, play, pause, goTo } = usePlayer(strip, speed);
  const line = useRef<HTMLElement>(null);
  useInWindow(line, pause);
  const last = strip.poses.length - 1;
  const at = Math.round(place);
  return (
    <section className="wb-play" ref={line} aria-label={name}>
      <button type="button" onClick={isPlaying ? pause : play}>
        {isPlaying ? 'Pause' : 'Play'}
      </button>
      <button type="button" onClick={() => goTo(at - 1)} disabled={at === 0}>
        One back
      </button>
      <button type="button" onClick={() => goTo(at + 1)} disabled={at === last}>
        One on
      </button>
      <input
        type="range"
        aria-label={`${name}: which pose`}
        aria-valuetext={`${at + 1} of ${last + 1}`}
        min={0}
        max={last}
        step={strip.moves ? 0.01 : 1}
        value={place}
        onChange={({ target }) => goTo(Number(target.value))}
      />
      <span className="wb-note">
        {at + 1} of {last + 1}
      </span>
      <button
        type="button"
        onClick={() => {
          goTo(0);
          dispatch({ do: 'rest' });
        }}
      >
        Back to rest
      </button>
    </section>
  );
}
