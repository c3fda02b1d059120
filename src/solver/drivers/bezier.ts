/** Newton's rule alone where it settles; after so many steps, halving alone, which always does. */
const NEWTON_STEPS = 24;
const STEPS = 100;

/**
 * The y of a cubic Bézier curve from (0, 0) to (1, 1) at 0 ≤ x ≤ 1, with x1 and x2 in 0..1 (CSS Easing Functions
 * Level 1, §cubic-bezier). Solved from the nearer end, where 1 − x is exact, until no double is nearer.
 */
export function bezier(x1: number, y1: number, x2: number, y2: number, x: number): number {
  if (x > 0.5) return 1 - fromStart(1 - x2, 1 - y2, 1 - x1, 1 - y1, 1 - x);
  return fromStart(x1, y1, x2, y2, x);
}

function fromStart(x1: number, y1: number, x2: number, y2: number, x: number): number {
  const t = parameter(3 * x1, 3 * (x2 - x1), x2, x);
  const c = 3 * y1;
  const b = 3 * (y2 - y1) - c;
  return t * (c + t * (b + t * (1 - c - b)));
}

/** The t in 0..1 at which the curve is at x. */
function parameter(c: number, step: number, x2: number, x: number): number {
  const b = step - c;
  const a = 1 - 3 * x2 + c;
  let low = 0;
  let high = 1;
  let t = x;
  for (let i = 0; i < STEPS; i++) {
    const off = t * (c + t * (b + t * a)) - x;
    if (off === 0) return t;
    if (off < 0) low = t;
    else high = t;
    const newton = t - off / (c + t * (2 * b + t * 3 * a));
    const inside = i < NEWTON_STEPS && newton > low && newton < high;
    const next = inside ? newton : low + 0.5 * (high - low);
    if (next === low || next === high) return t;
    t = next;
  }
  return t;
}
