/** One channel of one bone, or one switch, that the proof moves. Exactly one of part, bone, switch. */
export interface Input {
  id: string;
  part?: string;
  bone?: string;
  switch?: string;
  /** Of a bone: metres for move, degrees for turn, a factor for size. Absent for a switch. */
  channel?: InputChannel;
  /** On top of rest: 0 (size 1) is rest and lies within. For a switch, its range. */
  min: number;
  max: number;
}

export type InputChannel = `${'move' | 'turn' | 'size'}.${'x' | 'y' | 'z'}`;

/** Where no animator goes: a probe is passed over while the point lies within `within` metres of the other. */
export interface KeepOut {
  says: string;
  point: Where;
  near: Where;
  within: number;
}

/** A point of a bone; `bone` is a part's id, or else the name of a bone of the start. */
export interface Where {
  bone: string;
  at?: number;
}
