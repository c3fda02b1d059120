import type { Vec3 } from '../../solver/document/rig.ts';

/** Colours by what they say; the style sheet knows which they are. */
export type Tone = 'ink' | 'faint' | 'edge' | 'rule' | 'indigo' | 'ochre' | 'madder' | 'verdigris';
export type Dash = 'none' | 'reed' | 'fine';

/** A line through points in rig space, metres. */
export interface Stroke {
  readonly points: readonly Vec3[];
  readonly tone: Tone;
  /** Pixels. */
  readonly width: number;
  readonly dash: Dash;
}

/** A flat convex leaf of the plate's paper, which hides what is behind it. */
export interface Leaf {
  readonly points: readonly Vec3[];
}

export interface Label {
  readonly at: Vec3;
  readonly text: string;
  /** What it names, where its text says more than that. */
  readonly of?: string;
  readonly tone: Tone;
  /** Greater stays where two would overlap. */
  readonly rank: number;
  readonly italic?: boolean;
}

/** One bone, or one other thing, as it is drawn: leaves first, then strokes. */
export interface Figure {
  readonly bone: string | null;
  readonly leaves: readonly Leaf[];
  readonly strokes: readonly Stroke[];
  /** Where it stands, for what lies in front of what. */
  readonly at: Vec3;
}

/** A plate's whole content but the mesh. */
export interface Drawing {
  readonly figures: readonly Figure[];
  readonly labels: readonly Label[];
}
