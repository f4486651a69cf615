import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Context } from '../../context';
import type { Finding } from '../../finding';
import { joined } from '../../joined';
import { carriesLoad } from '../../torque/carries-load';
import { tooStrong } from '../../torque/too-strong';

/**
 * Does the rated torque carry a constant-torque load at every speed asked, and can coupling and gear carry the motor's?
 * N·m at the motor shaft. On a drive a quadratic load is judged at its set speed as well; on the mains power says it.
 */
export function torque(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  return joined(carriesLoad(set, candidate, context), tooStrong(set, context));
}
