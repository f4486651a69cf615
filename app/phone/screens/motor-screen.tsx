import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { Facts } from '@/app/look/facts';
import { TitleBlock } from '@/app/look/title-block';
import { MotorAlone } from '@/app/motor-shown';
import { setPath } from '@/app/paths';
import { PlateFigures } from '@/app/plate-facts';
import { WhereaboutsText } from '@/app/whereabouts-text';
import { Asked } from '../look/asked';
import { useAsk } from '../use-ask';
import { NotHere } from './not-here';

/** One motor: where it is and what its plate says. */
export function MotorScreen({ number }: { number: string }) {
  const answer = useAsk('motor', { number });
  return (
    <Asked answer={answer} nothing={<NotHere what="motor" name={number} />}>
      {({ motor, mount, at }) => (
        <>
          <TitleBlock
            tag={motor.number}
            kind="Motor"
            name={<bdi>{[motor.maker, motor.serial].filter(Boolean).join(', ') || 'maker not told'}</bdi>}
            cells={[
              { label: 'Where', value: <WhereaboutsText at={at} isLink /> },
              { label: 'Condition', value: <bdi>{motor.condition ?? 'not told'}</bdi> },
              { label: 'Rewound', value: motor.rewinds === null ? 'not told' : String(motor.rewinds) },
            ]}
          />
          <PlateFigures motor={motor.motor} />
          <MotorAlone motor={motor.motor} maker={motor.maker} serial={motor.serial} mount={mount} />
          <Facts rows={[{ label: 'Label', value: `${motor.code.slice(0, 4)}-${motor.code.slice(4)}` }]} />
          {at.setTag !== null && (
            <ActionBar>
              <Action href={setPath(at.setTag)}>To the set</Action>
            </ActionBar>
          )}
        </>
      )}
    </Asked>
  );
}
