/**
 * Calls `come` once for each element of the page that the selector names, when the reader comes near it: less than
 * about a screen away. What has to be loaded for it is loaded then and not before.
 */
export function whenNear(selector: string, come: (place: HTMLElement) => void): void {
  const watcher = new IntersectionObserver(
    (entries) => {
      for (const { isIntersecting, target } of entries) {
        if (!isIntersecting) continue;
        watcher.unobserve(target);
        come(target as HTMLElement);
      }
    },
    { rootMargin: '700px 0px' },
  );
  for (const place of document.querySelectorAll(selector)) watcher.observe(place);
}
