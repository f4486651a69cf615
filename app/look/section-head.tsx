import type { ReactNode } from 'react';

/** A heading over a ruled line, with a few faint words at its right. */
export function SectionHead({ title, aside }: { title: ReactNode; aside?: ReactNode }) {
  return (
    <div className="head">
      <h2>{title}</h2>
      {aside !== undefined && <span className="label">{aside}</span>}
    </div>
  );
}
