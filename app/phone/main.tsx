import { createRoot } from 'react-dom/client';
import { ask, tellChanged } from './ask';
import { followLinks } from './go';
import { keepWorker } from './keep-worker';
import { Phone } from './phone';

const sheet = localStorage.getItem('sheet');
if (sheet === 'day' || sheet === 'night') document.documentElement.dataset.theme = sheet;

const root = document.getElementById('phone');
if (root === null) throw new Error('The page has no place for the app.');
followLinks();
createRoot(root).render(<Phone />);
// The app is kept as soon as the page answers: what it fetches for that would be in the way of the first answer.
void ask('status', {}).finally(() => {
  keepWorker();
  // Each weight is there before something is first written in it: one that comes later would move it.
  for (const face of document.fonts) void face.load().catch(() => undefined);
});

// Whoever takes the phone out of the pocket wants what is true now.
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'visible') void ask('bringUp', {}).then(tellChanged);
});
