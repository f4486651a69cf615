import type { MotorWhole, SetWhole } from '@/lib/register/queries/records-after';
import { recordOf } from './record-of';

const retiredAt = (state: SetWhole['state']) => (state.retiredAt === undefined ? null : String(state.retiredAt));

export const answerOfSet = ({ id, version, state, motorNumber }: SetWhole) => ({
  ...{ id, version, retiredAt: retiredAt(state), motorNumber },
  record: recordOf(state),
});

export const answerOfMotor = ({ id, version, state, setTag, store, shelf }: MotorWhole) => ({
  ...{ id, version, retiredAt: retiredAt(state), setTag, store, shelf },
  record: recordOf(state),
});
