import { type KeyboardEvent, useState } from 'react';
import { withUnit } from '../sentence/piece.ts';

interface Props {
  label: string;
  value: number;
  unit: string;
  quiet?: boolean;
  step: number;
  put: (value: number) => void;
  least?: number;
  most?: number;
  disabled?: boolean;
  refusalId?: string | undefined;
}

/**
 * A number in the text. What is typed holds at once wherever it reads as a number; arrows and Page keys step it.
 * While it has the focus it shows what was typed, afterwards what holds.
 */
export function NumberWord({ label, value, unit, quiet, step, put, least, most, disabled, refusalId }: Props) {
  const [typed, setTyped] = useState<string | null>(null);
  const shown = typed ?? fieldText(value);

  function type(text: string) {
    setTyped(text);
    const number = Number(text);
    if (text.trim() !== '' && Number.isFinite(number) && number !== value) put(number);
  }

  function onKeyDown(event: KeyboardEvent) {
    // Undo speaks of the document: what it brings back must show.
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z') setTyped(null);
    const steps = STEPS[event.key];
    if (steps === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const next = bounded(rounded(value + steps * step), least, most);
    setTyped(fieldText(next));
    if (next !== value) put(next);
  }

  return (
    <span className="wb-word wb-number">
      <span aria-hidden="true">{shown || '0'}</span>
      <input
        type="number"
        step="any"
        inputMode="decimal"
        aria-label={withUnit(label, unit)}
        aria-describedby={refusalId}
        aria-invalid={refusalId && typed !== null ? true : undefined}
        value={shown}
        disabled={disabled}
        min={least}
        max={most}
        onChange={(event) => type(event.target.value)}
        onKeyDown={onKeyDown}
        onBlur={() => setTyped(null)}
      />
      {unit && !quiet && <span className={unit === '°' ? 'wb-degree' : 'wb-unit'}>{unit}</span>}
    </span>
  );
}

const STEPS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 };

function fieldText(value: number): string {
  return String(Number(value.toPrecision(6)));
}

function rounded(value: number): number {
  return Number(value.toPrecision(12));
}

function bounded(value: number, least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY): number {
  return Math.min(most, Math.max(least, value));
}
