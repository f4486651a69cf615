// npm run bench:doubts: how many doubts each rule raises on plates put together from the printed tables and on
// sets made for them, where every one is a false alarm, and on the demo plant.
import { type Doubt, RULES } from '@/lib/plausibility/doubt';
import { doubtsOfMotor } from '@/lib/plausibility/doubts-of-motor';
import { doubtsOfSet } from '@/lib/plausibility/doubts-of-set';
import { doubtsOfSite } from '@/lib/plausibility/doubts-of-site';
import { demoMotors, demoSets, demoSite } from './demo-plant';
import { publishedPlates } from './published-plates';
import { publishedSets } from './published-sets';
import { spoiltPlates } from './spoilt-plates';

interface Column {
  from: string;
  of: number;
  doubts: Doubt[];
}

const sets = publishedSets();
const [motors, plant, site] = [demoMotors(), demoSets(), demoSite()];
const columns: Column[] = [
  ...publishedPlates().map(
    (one): Column => ({
      from: `plates, ${one.from}`,
      of: one.motors.length,
      doubts: one.motors.flatMap((motor) => doubtsOfMotor(motor)),
    }),
  ),
  {
    from: 'sets made for those plates',
    of: sets.length,
    doubts: sets.flatMap(({ set, motor }) => doubtsOfSet(set, motor)),
  },
  { from: 'motors of the demo', of: motors.length, doubts: motors.flatMap((motor) => doubtsOfMotor(motor)) },
  { from: 'sets of the demo', of: plant.length, doubts: plant.flatMap((set) => doubtsOfSet(set, set.failed)) },
  { from: 'the demo as a site', of: site.length, doubts: doubtsOfSite(site).map(({ doubt }) => doubt) },
];

const letter = (i: number) => String.fromCharCode(65 + i);
for (const [i, { from, of }] of columns.entries()) console.log(`${letter(i)}  ${of} ${from}`);
console.log(`\n${'wrong / doubtful'.padEnd(22)}${columns.map((_, i) => letter(i).padStart(9)).join('')}`);
for (const rule of RULES) {
  const cells = columns.map(({ doubts }) => {
    const own = doubts.filter((doubt) => doubt.rule === rule);
    const wrong = own.filter(({ grade }) => grade === 'wrong').length;
    return own.length === 0 ? '·' : `${wrong} / ${own.length - wrong}`;
  });
  console.log(`${rule.padEnd(22)}${cells.map((cell) => cell.padStart(9)).join('')}`);
}
for (const { from, doubts } of columns)
  for (const rule of RULES) {
    const [first, ...more] = doubts.filter((doubt) => doubt.rule === rule);
    if (first) console.log(`\n${rule}, ${from}, the first of ${more.length + 1}:\n  ${first.grade}: ${first.says}`);
  }

console.log('\nPlates of MG 1 Part 13 spoilt in one way, of a hundred caught:');
for (const { how, motors: spoilt } of spoiltPlates()) {
  const caught = spoilt.filter((one) => doubtsOfMotor(one).length > 0).length;
  console.log(`${((100 * caught) / spoilt.length).toFixed(0).padStart(5)} of ${spoilt.length}  ${how}`);
}
