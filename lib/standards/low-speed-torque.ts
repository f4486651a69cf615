import { lowSpeedTorque as table } from './tables/low-speed-torque';

/**
 * Share of rated torque a motor cooled by its own shaft fan may give continuously at `speedPu` of base speed.
 * 1 at base speed and above (field weakening is not its question). Null below a tenth, where nothing is printed.
 */
export function lowSpeedTorque(speedPu: number): number | null {
  if (speedPu >= 1) return 1;
  const { rows } = table;
  let lower = rows[0];
  if (lower === undefined || speedPu < lower.speedPu) return null;
  for (const upper of rows) {
    if (upper.speedPu < speedPu) {
      lower = upper;
      continue;
    }
    if (upper.speedPu === lower.speedPu) return upper.torquePu[0];
    const along = (speedPu - lower.speedPu) / (upper.speedPu - lower.speedPu);
    return lower.torquePu[0] + (upper.torquePu[0] - lower.torquePu[0]) * along;
  }
  return null;
}
