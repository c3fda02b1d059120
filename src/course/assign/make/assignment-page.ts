import { fillPlace } from '../fill-place.ts';

async function fill(place: HTMLElement): Promise<void> {
  const { openMaker } = await import('./open-maker.tsx');
  await openMaker(place);
}

void fillPlace('assignment', fill, 'The list of exercises could not be loaded. Reload the page to try once more.');
