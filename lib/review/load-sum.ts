import { drivenLoadOf } from '@/lib/matching/context/driven-load';
import { figure } from '@/lib/units/figure';
import type { ReviewCase } from './review-case';

/** What the pump asks of the motor: kW at the motor's shaft where it runs, and the sum as a person would write it. */
export interface LoadSum {
  motorKw: number;
  says: string;
}

/** Null while the load is not known. A gear whose losses nobody told leaves the least it can be. */
export function loadSum({ set, context }: ReviewCase): LoadSum | null {
  const { shaftKw, efficiency } = drivenLoadOf(set);
  if (shaftKw === null) return null;
  const { point } = context;
  const running = point.restored ?? point;
  const pumpKw = running.pumpKw ?? shaftKw;
  const motorKw = running.motorKw ?? pumpKw / (efficiency ?? 1);
  const isMoved = Math.abs(pumpKw / shaftKw - 1) > SAME;
  const at = isMoved && running.pumpRpm !== null ? ` (${figure(shaftKw)} kW at the speed told)` : '';
  const speed = isMoved && running.pumpRpm !== null ? ` at ${figure(running.pumpRpm, 0)} rpm` : '';
  const losses =
    efficiency === null ? ', before the losses of the gear' : efficiency === 1 ? '' : ` / ${figure(efficiency, 3)}`;
  return {
    motorKw,
    says: `${figure(pumpKw)} kW at the pump${speed}${at}${losses} = ${figure(motorKw)} kW at the motor`,
  };
}

/** Rounding of the solved speed is no other load. */
const SAME = 0.001;
