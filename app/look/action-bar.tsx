import type { ReactNode } from 'react';

/** Sticks to the bottom edge: one filled action, one outlined. A choice between two losses is stacked. Last in a Sheet or its form. */
export function ActionBar({ stack, children }: { stack?: true; children: ReactNode }) {
  return <div className={stack ? 'actions stack' : 'actions'}>{children}</div>;
}
