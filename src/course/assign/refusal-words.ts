import type { Refusal } from '../../solver/document/refusal.ts';

/** Why a document cannot be used, in a sentence and a half. */
export function refusalWords({ place, found, expected }: Refusal): string {
  return `At ${place || 'the whole of it'}: found ${found}, expected ${expected}.`;
}
