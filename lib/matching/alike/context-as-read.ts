import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import type { FrameDimensions } from '@/lib/standards/dimension';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import type { Context } from '../context';
import { type BaseChange, baseChangeOf } from '../context/base-change';
import { type Derating, deratingOf } from '../context/derating';
import { type HubChange, hubChangeOf } from '../context/hub-change';
import { type OperatingPoint, operatingPointOf } from '../context/operating-point';
import type { RatingRow } from '../context/rating-row';
import { type Seat, seatOf } from '../context/seat';

/** The context of `contextOf`, each part of it worked out when a criterion reads it: who asks few criteria pays for few. */
export class ContextAsRead implements Context {
  readonly asOf = null;
  #point: OperatingPoint | null = null;

  constructor(
    private readonly set: PumpSet,
    private readonly motor: Motor,
    readonly settings: SiteSettings,
    /** The motor's rating row at the set's supply, as `ratingRowOf` answers it. */
    private readonly rowOf: (set: PumpSet, motor: Motor) => RatingRow,
  ) {}

  get seat(): Seat {
    return seatOf(this.set);
  }
  get fit(): FrameDimensions {
    return motorDimensions(this.motor);
  }
  get failedFit(): FrameDimensions | null {
    return this.set.failed === null ? null : motorDimensions(this.set.failed);
  }
  get row(): RatingRow {
    return this.rowOf(this.set, this.motor);
  }
  get derating(): Derating {
    return deratingOf(this.set, this.motor);
  }
  get point(): OperatingPoint {
    this.#point ??= operatingPointOf(this.set, this.motor, this.row);
    return this.#point;
  }
  get base(): BaseChange {
    return baseChangeOf(this.set, this.fit, this.seat, this.settings);
  }
  get hub(): HubChange {
    return hubChangeOf(this.set, this.fit, this.seat);
  }
}
