// node --import tsx bench/doubts.ts: how many doubts each rule raises on plates put together from the printed tables, and
// on the demo plant. What it raises on the first are false alarms.

import { motor } from '@/lib/plant/motor';
import type { Doubt } from '@/lib/plausibility/doubt';
import { RULES } from '@/lib/plausibility/doubt';
import { doubtsOfMotor } from '@/lib/plausibility/doubts-of-motor';
import { harrowmere } from '../seed/plant/harrowmere';
import { publishedPlates } from './published-plates';

const TODAY = '2026-11-25';
const columns: { from: string; of: number; doubts: Doubt[] }[] = publishedPlates().map(({ from, motors }) => ({
  from,
  of: motors.length,
  doubts: motors.flatMap(doubtsOfMotor),
}));
const demo = harrowmere(TODAY).motors.map(({ number, plate }) => motor.parse({ id: number, ...plate }));
columns.push({ from: 'demo plant, motors', of: demo.length, doubts: demo.flatMap(doubtsOfMotor) });

for (const [i, { from, of }] of columns.entries()) console.log(`${String.fromCharCode(65 + i)}  ${of} plates: ${from}`);
console.log(
  `\n${'wrong / doubtful'.padEnd(22)}${columns.map((_, i) => String.fromCharCode(65 + i).padStart(11)).join('')}`,
);
for (const rule of RULES) {
  const cells = columns.map(({ doubts }) => {
    const own = doubts.filter((doubt) => doubt.rule === rule);
    const wrong = own.filter(({ grade }) => grade === 'wrong').length;
    return own.length === 0 ? '·' : `${wrong} / ${own.length - wrong}`;
  });
  console.log(`${rule.padEnd(22)}${cells.map((cell) => cell.padStart(11)).join('')}`);
}
for (const { from, doubts } of columns) {
  const seen = new Set<string>();
  for (const { rule, says } of doubts) {
    if (seen.has(rule)) continue;
    seen.add(rule);
    console.log(`\n${from}, ${rule}, the first of ${doubts.filter((one) => one.rule === rule).length}:\n  ${says}`);
  }
}
