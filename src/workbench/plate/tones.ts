import type { Tone } from './drawing.ts';

export type Rgb = readonly [red: number, green: number, blue: number];
/** The colours of the page as a plate paints with them, 0 to 1. */
export type Tones = Readonly<Record<Tone | 'paper', Rgb>>;

const NAMES = ['paper', 'ink', 'faint', 'edge', 'rule', 'indigo', 'ochre', 'madder', 'verdigris'] as const;

/** Reads the page's colours where an element stands; by day and by night they differ. */
export function tonesAt(element: Element): Tones {
  const style = getComputedStyle(element);
  const entries = NAMES.map((name) => [name, parsed(style.getPropertyValue(`--${name}`))] as const);
  return Object.fromEntries(entries) as unknown as Tones;
}

/** Calls back when the colours of the page may have changed. */
export function onTonesChange(listener: () => void): () => void {
  const night = matchMedia('(prefers-color-scheme: dark)');
  night.addEventListener('change', listener);
  const observer = new MutationObserver(listener);
  observer.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme', 'class'] });
  return () => {
    night.removeEventListener('change', listener);
    observer.disconnect();
  };
}

/** "rgb(29, 39, 51)", as registered colours read, or "#1d2733". */
function parsed(colour: string): Rgb {
  const numbers = colour.match(/[\d.]+/g)?.map(Number) ?? [];
  if (colour.trim().startsWith('rgb') && numbers.length >= 3)
    return [numbers[0]! / 255, numbers[1]! / 255, numbers[2]! / 255];
  const hex = Number.parseInt(colour.trim().slice(1, 7), 16) || 0;
  return [((hex >> 16) & 255) / 255, ((hex >> 8) & 255) / 255, (hex & 255) / 255];
}
