import { whenNear } from './when-near.ts';

/** React, three and the grader are loaded with the first exercise that the reader comes near. */
whenNear('[data-exercise]', async (place) => {
  try {
    const { openWorkbench } = await import('./open-workbench.tsx');
    openWorkbench(place, place.dataset.exercise!);
  } catch (error) {
    place.textContent = 'The workbench could not be loaded. Reload the page to try once more.';
    throw error;
  }
});
