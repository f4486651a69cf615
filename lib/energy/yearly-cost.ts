import type { SiteSettings } from '@/lib/plant/site-settings';
import type { RunningAtDuty } from './running-at-duty';
import { toldOr, unknown, type WorkedOut, workedOut } from './worked-out';

type Asked = Pick<RunningAtDuty, 'inputKw' | 'reactiveKvar' | 'hoursPerYear'>;
type Yearly = Pick<RunningAtDuty, 'kwhPerYear' | 'moneyPerYear' | 'reactiveMoneyPerYear'>;

/**
 * What running takes in a year, at one price of energy, all hours at the same load. The reactive power that is paid for
 * is what goes beyond the site's least power factor, as if this motor stood alone behind the meter.
 */
export function yearlyCost({ inputKw, reactiveKvar, hoursPerYear }: Asked, settings: SiteSettings): Yearly {
  const kwhPerYear = workedOut(
    { inputKw, hoursPerYear },
    (of) => of.inputKw * of.hoursPerYear,
    'input × hours run in a year',
  );
  const pricePerKwh = toldOr(
    settings.pricePerKwh,
    'the site’s price of a kWh',
    'The site has not told the price of a kWh.',
  );
  return {
    kwhPerYear,
    moneyPerYear: workedOut(
      { kwhPerYear, pricePerKwh },
      (of) => of.kwhPerYear * of.pricePerKwh,
      'energy × the site’s price of a kWh',
    ),
    reactiveMoneyPerYear: reactiveMoney(inputKw, reactiveKvar, settings),
  };
}

function reactiveMoney(
  inputKw: WorkedOut,
  reactiveKvar: WorkedOut,
  { pricePerKvarYear, leastPowerFactor }: SiteSettings,
): WorkedOut {
  if (pricePerKvarYear === null || leastPowerFactor === null)
    return unknown('The site has not told what reactive power costs, and above which power factor it is free.');
  const free = Math.tan(Math.acos(leastPowerFactor));
  return workedOut(
    { inputKw, reactiveKvar },
    (of) => Math.max(0, of.reactiveKvar - of.inputKw * free) * pricePerKvarYear,
    `kvar beyond power factor ${leastPowerFactor} × the site’s price, as if it stood alone behind the meter`,
  );
}
