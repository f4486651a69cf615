import { labelText } from '@/lib/plant/label-code';
import type { Motor } from '@/lib/plant/motor';
import type { LabelLine } from '@/lib/register/queries/label-lines';
import { powerText } from '../rating-text';
import { fittedMm } from './fitted-mm';
import { BESIDE_CODE_MM, cornerOf, type Paper, wordsMm } from './papers';
import type { DrawnCode } from './qr';

/** Largest type of a tag, as a share of the label's height. */
const TAG_SHARE = 0.22;

/** One label: its code to scan, what it is of, and the code to type. */
export function Label({ line, code, paper, place }: { line: LabelLine; code: DrawnCode; paper: Paper; place: number }) {
  const { label, free, codeMm } = paper;
  const { leftMm, topMm } = cornerOf(paper, place);
  return (
    <li
      className="one-label"
      style={{
        ...{ left: mm(leftMm), top: mm(topMm), width: mm(label.widthMm), height: mm(label.heightMm) },
        ...{ padding: `0 ${mm(free.acrossMm)}`, columnGap: mm(BESIDE_CODE_MM) },
      }}
    >
      <svg
        viewBox={`0 0 ${code.size} ${code.size}`}
        shapeRendering="crispEdges"
        style={{ width: mm(codeMm), height: mm(codeMm) }}
        role="img"
        aria-label={`QR code ${labelText(line.code)}`}
      >
        <path d={code.path} />
      </svg>
      <div>
        <p
          className="label-tag"
          style={{ fontSize: mm(fittedMm(line.name, wordsMm(paper), label.heightMm * TAG_SHARE)) }}
        >
          <bdi>{line.name}</bdi>
        </p>
        <p className="label-serves">
          <bdi>{line.thing === 'set' ? (line.serves ?? '') : plateText(line.motor)}</bdi>
        </p>
        <p className="label-code">
          <b>{labelText(line.code)}</b> {line.thing}
        </p>
      </div>
    </li>
  );
}

const plateText = (motor: Motor) => [motor.frame, powerText(motor)].filter((part) => part !== null).join(', ');

const mm = (value: number) => `${value}mm`;
