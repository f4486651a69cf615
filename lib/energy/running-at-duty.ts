import type { WorkedOut } from './worked-out';

/** How a motor runs in a set at its duty, and what that takes in a year. The duty is the greatest continuous one. */
export interface RunningAtDuty {
  /** What its shaft gives. */
  loadKw: WorkedOut;
  /** Of its rated power at this supply. */
  loadPct: WorkedOut;
  motorRpm: WorkedOut;
  ratedEfficiencyPct: WorkedOut;
  /** At that load. */
  efficiencyPct: WorkedOut;
  /** At that load, per unit; of the motor on the mains. */
  powerFactor: WorkedOut;
  inputKw: WorkedOut;
  lossesKw: WorkedOut;
  /** In the line; on a drive at its output. */
  amps: WorkedOut;
  reactiveKvar: WorkedOut;
  hoursPerYear: WorkedOut;
  kwhPerYear: WorkedOut;
  /** What that energy costs. */
  moneyPerYear: WorkedOut;
  /** What the supplier asks for its reactive power in a year, at the site's price for it. */
  reactiveMoneyPerYear: WorkedOut;
  /** What the load or the speed takes from the failed motor or for granted; null: nothing. */
  assumes: string | null;
}
