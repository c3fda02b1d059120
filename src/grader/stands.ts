import { createState, evaluate, type Program, type State } from '../solver/index.ts';
import { isSame } from './probe/listed.ts';
import type { PackedValues, Packer } from './probe/packValues.ts';

/** Requirements measure a pose against others near it: with an input at rest, a switch at its ends, one step back. */
const MOST = 6;

/** A pose of input values that was evaluated, and what came of it. */
interface Stand extends PackedValues {
  readonly state: State;
  used: number;
}

/** The last few poses that were evaluated, so that one which several requirements speak of is evaluated once. */
export class Stands {
  readonly #program: Program;
  readonly #packer: Packer;
  readonly #stands: Stand[] = [];
  #clock = 0;

  constructor(program: Program, packer: Packer) {
    this.#program = program;
    this.#packer = packer;
  }

  /** The state of the pose with the inputs at these values; it holds until as many others have been asked for. */
  at(values: Float64Array): State {
    this.#clock++;
    const stand = this.#find(values) ?? this.#evaluate(values);
    stand.used = this.#clock;
    return stand.state;
  }

  #find(values: Float64Array): Stand | null {
    for (let k = 0; k < this.#stands.length; k++) {
      const stand = this.#stands[k]!;
      if (isSame(stand.values, values)) return stand;
    }
    return null;
  }

  #evaluate(values: Float64Array): Stand {
    const stand = this.#free();
    this.#packer.pack(values, stand);
    evaluate(this.#program, stand.state, stand.packed);
    return stand;
  }

  /** A new one, or the one whose last use is longest ago. */
  #free(): Stand {
    const stands = this.#stands;
    if (stands.length < MOST) {
      const made = { ...this.#packer.room(), state: createState(this.#program), used: 0 };
      stands.push(made);
      return made;
    }
    let oldest = stands[0]!;
    for (let k = 1; k < stands.length; k++) if (stands[k]!.used < oldest.used) oldest = stands[k]!;
    return oldest;
  }
}
