import { fillPlace } from '../fill-place.ts';

async function fill(place: HTMLElement): Promise<void> {
  const { openOpener } = await import('./open-opener.tsx');
  openOpener(place);
}

void fillPlace('opened-assignment', fill, 'The page could not be loaded whole. Reload it to try once more.');
