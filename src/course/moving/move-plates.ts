import { whenNear } from '../site/when-near.ts';

/** The solver is loaded with the first plate that the reader comes near. */
whenNear('[data-moving-plate]', async (plate) => {
  const { movePlate } = await import('./move-plate.ts');
  movePlate(plate);
});
