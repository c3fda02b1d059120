/** Opens the workbench of each exercise on the page when the reader comes near it, and not before. */
const ahead = '700px 0px';

const watcher = new IntersectionObserver(
  (entries) => {
    for (const { isIntersecting, target } of entries) {
      if (!isIntersecting) continue;
      watcher.unobserve(target);
      void open(target as HTMLElement);
    }
  },
  { rootMargin: ahead },
);

for (const place of document.querySelectorAll('[data-exercise]')) watcher.observe(place);

async function open(place: HTMLElement) {
  try {
    const { openWorkbench } = await import('./open-workbench.tsx');
    openWorkbench(place, place.dataset.exercise!);
  } catch (error) {
    place.textContent = 'The workbench could not be loaded. Reload the page to try once more.';
    throw error;
  }
}
