import type { Tone } from './drawing.ts';

/** How a bone is drawn. */
export interface Manner {
  /** Metres a pixel: strokes and outlines keep their width at any zoom. */
  readonly pixel: number;
  /** The rig's own size, metres. */
  readonly size: number;
  readonly chosen: boolean;
  /** Where it should be, or would be: fine dashes and no leaf. */
  readonly ghost?: Tone;
}

export const ROLE_TONES = { skin: 'ink', helper: 'ochre', control: 'indigo', guide: 'ink' } as const;
