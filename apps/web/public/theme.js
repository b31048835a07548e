// Runs before the first paint, so that a screen chosen for the night never flashes white. A file of its own, since
// the pages allow no inline scripts but the framework's.
try {
  const choice = JSON.parse(localStorage.getItem('halfshaft.theme'));
  if (['paper', 'graphite', 'sun', 'night'].includes(choice)) document.documentElement.dataset.theme = choice;
} catch {
  // No storage: the page follows the phone.
}
