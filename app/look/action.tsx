import Link from 'next/link';
import type { ReactNode } from 'react';

/** The one main action of a page, as a link; `second` is the outlined other one. */
export function Action({ href, second, children }: { href: string; second?: true; children: ReactNode }) {
  return (
    <Link className={second ? 'second' : 'action'} href={href}>
      {children}
    </Link>
  );
}

/** The same as the button of a form. `name` and `value` tell the form which button was pressed. */
export function ActionButton({
  second,
  disabled,
  name,
  value,
  form,
  children,
}: {
  second?: true;
  disabled?: boolean;
  name?: string;
  value?: string;
  form?: string;
  children: ReactNode;
}) {
  return (
    <button
      className={second ? 'second' : 'action'}
      type="submit"
      disabled={disabled}
      name={name}
      value={value}
      form={form}
    >
      {children}
    </button>
  );
}
