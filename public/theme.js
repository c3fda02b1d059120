// Day or night: as the reader last chose, or else as the system says. It runs before the page is drawn, so that the
// page never flashes, and it is a file of its own, since the pages' policy allows no script inside them.
// It also tells the style sheets whether scripts run: they do not, as modules, on a page opened from disk.
(() => {
  const root = document.documentElement;
  root.dataset.script = location.protocol === 'file:' ? 'from-disk' : 'on';
  const system = matchMedia('(prefers-color-scheme: dark)');

  function chosen() {
    try {
      const kept = localStorage.getItem('counterpose/theme');
      return kept === 'day' || kept === 'night' ? kept : null;
    } catch {
      return null; // storage is switched off: the choice lasts for this page
    }
  }

  function keep(theme) {
    try {
      localStorage.setItem('counterpose/theme', theme);
    } catch {
      // as above
    }
  }

  const isNight = () => (root.dataset.theme ?? (system.matches ? 'night' : 'day')) === 'night';

  function name(button) {
    button.textContent = isNight() ? 'Day' : 'Night';
    button.setAttribute('aria-label', isNight() ? 'Use the day colours' : 'Use the night colours');
  }

  function announce() {
    for (const button of document.querySelectorAll('.theme')) name(button);
    document.dispatchEvent(new CustomEvent('counterpose:theme', { detail: { night: isNight() } }));
  }

  const kept = chosen();
  if (kept) root.dataset.theme = kept;

  system.addEventListener('change', announce);
  document.addEventListener('DOMContentLoaded', () => {
    for (const button of document.querySelectorAll('.theme')) {
      name(button);
      button.addEventListener('click', () => {
        root.dataset.theme = isNight() ? 'day' : 'night';
        keep(root.dataset.theme);
        announce();
      });
    }
  });
})();
