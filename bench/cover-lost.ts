// npm run bench:cover-lost: what losing one shelf motor costs to work out, over a plant of 5,000 sets and 3,000 shelf motors.
import { defaultSettings } from '@/lib/matching/default-settings';
import { coverLost } from '@/lib/spares/cover-lost';
import { plant } from './plant';

const { sets, motors } = plant({ sets: 5_000, spares: 3_000 });
const covered = sets.map((set, i) => ({ setId: set.tag, service: null, criticality: (i % 4) + 1, set }));

const times: number[] = [];
let most = { told: 0, number: '' };
for (let i = 0; i < motors.length; i += 150) {
  const taken = motors[i];
  if (taken === undefined) break;
  const start = performance.now();
  const told = coverLost(
    taken,
    covered,
    motors.filter((one) => one !== taken),
    defaultSettings,
    '2026-11-28',
  );
  times.push(performance.now() - start);
  if (told.length > most.told) most = { told: told.length, number: taken.id };
}
times.sort((a, b) => a - b);
const ms = (at: number) =>
  `${(times[Math.min(times.length - 1, Math.floor(at * times.length))] ?? Number.NaN).toFixed(0)} ms`;
console.log(`${times.length} motors taken, one after another: median ${ms(0.5)}, 95 % ${ms(0.95)}, longest ${ms(1)}`);
console.log(`most sets that lost cover: ${most.told}, by ${most.number}`);
