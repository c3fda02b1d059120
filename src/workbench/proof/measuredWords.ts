import type { RequirementResult } from '../../grader/result.ts';
import { amountText } from '../../grader/words/amount.ts';

/** Under this share of what is allowed, what was measured is the arithmetic's own, and told as none. */
const NONE = 1e-6;

/** "Measured 0.2°, allowed 0.5°" */
export function measuredWords(
  measured: number,
  { allowed, unit }: Pick<RequirementResult, 'allowed' | 'unit'>,
): string {
  const told = Math.abs(measured) < NONE * allowed ? 0 : measured;
  return `Measured ${amountText(told, unit)}, allowed ${amountText(allowed, unit)}`;
}
