import { createRoot } from 'react-dom/client';
import { askAhead } from './ahead';
import { ask, tellChanged } from './ask';
import { followLinks } from './go';
import { keepWorker } from './keep-worker';
import { Phone } from './phone';

const sheet = localStorage.getItem('sheet');
if (sheet === 'day' || sheet === 'night') document.documentElement.dataset.theme = sheet;

const root = document.getElementById('phone');
if (root === null) throw new Error('The page has no place for the app.');
followLinks();
const faces = { areHere: false };
void Promise.all([...document.fonts].map((face) => face.load())).then(
  () => {
    faces.areHere = true;
  },
  () => undefined,
);
// The shell says meanwhile what the app would say.
void askAhead('status', {}).finally(() => {
  // A face that comes later would move what is written: a page begun without ours ends without them.
  if (faces.areHere) document.documentElement.dataset.faces = 'ours';
  createRoot(root).render(<Phone />);
  // The app is kept as soon as the page answers: what it fetches for that would be in the way of the first answer.
  keepWorker();
});

// Whoever takes the phone out of the pocket wants what is true now.
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'visible') void ask('bringUp', {}).then(tellChanged);
});
