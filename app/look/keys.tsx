'use client';

import { useRouter } from 'next/navigation';
import { useEffect, useRef, useState } from 'react';
import { commandsLike } from './commands';

/** Where a person keeps that single keys are off: they get in the way of speech control (WCAG 2.2, 2.1.4). */
const OFF = 'bedplate.single-keys-off';

/** The keyboard's ways: / to find, Ctrl-K to go anywhere, ? for what there is. */
export function Keys() {
  const router = useRouter();
  const goTo = useRef<HTMLDialogElement>(null);
  const help = useRef<HTMLDialogElement>(null);
  const [typed, setTyped] = useState('');
  const [isOff, setOff] = useState(false);
  const found = commandsLike(typed);

  useEffect(() => {
    setOff(localStorage.getItem(OFF) === '1');
    const onKey = (event: KeyboardEvent) => {
      if ((event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === 'k') {
        event.preventDefault();
        setTyped('');
        if (goTo.current?.open === false) goTo.current.showModal();
        return;
      }
      const isTyping =
        event.target instanceof Element && event.target.closest('input, textarea, select, [contenteditable]') !== null;
      if (isTyping || event.ctrlKey || event.metaKey || event.altKey || localStorage.getItem(OFF) === '1') return;
      if (document.querySelector('dialog[open]') !== null) return;
      if (event.key === '/') {
        event.preventDefault();
        const search = document.querySelector<HTMLInputElement>('main input[type="search"], main input[name="q"]');
        if (search === null) router.push('/find');
        else search.focus();
      } else if (event.key === '?') {
        event.preventDefault();
        help.current?.showModal();
      }
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, [router]);

  return (
    <>
      <dialog ref={goTo} className="keys screen-only" aria-label="Go to" onClose={() => setTyped('')}>
        <form
          method="dialog"
          onSubmit={() => {
            if (found[0] !== undefined) router.push(found[0].href);
          }}
        >
          <label htmlFor="go-to">Go to</label>
          <input
            id="go-to"
            className="in"
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
            autoComplete="off"
            maxLength={60}
          />
          <ul>
            {found.map(({ href, words }) => (
              <li key={href}>
                <a
                  href={href}
                  onClick={(event) => {
                    event.preventDefault();
                    goTo.current?.close();
                    router.push(href);
                  }}
                >
                  {words}
                </a>
              </li>
            ))}
          </ul>
          <p className="label">{found.length === 0 ? 'Nothing is called so.' : 'Enter goes to the first.'}</p>
        </form>
      </dialog>
      <dialog ref={help} className="keys screen-only" aria-label="Keys">
        <h2>Keys</h2>
        <dl className="kv">
          {KEYS.map(([key, says]) => (
            <div key={key}>
              <dt>
                <kbd>{key}</kbd>
              </dt>
              <dd>{says}</dd>
            </div>
          ))}
        </dl>
        <label className="tick">
          <input
            type="checkbox"
            checked={isOff}
            onChange={(event) => {
              setOff(event.target.checked);
              localStorage.setItem(OFF, event.target.checked ? '1' : '0');
            }}
          />
          <span>Single keys off</span>
        </label>
        <form method="dialog">
          <button type="submit" className="second">
            Close
          </button>
        </form>
      </dialog>
    </>
  );
}

const KEYS = [
  ['/', 'find: to the field for words on this page, else to the search'],
  ['Ctrl K', 'go anywhere by its name'],
  ['?', 'this list'],
  ['Esc', 'closes what opened'],
] as const;
