import { useEffect, useState } from 'react';
import { whenNewer } from '../keep-worker';

/** A newer app is on the phone: it takes over when the person says so, or when all its tabs are closed. */
export function NewerNote() {
  const [activate, setActivate] = useState<(() => void) | null>(null);
  useEffect(() => whenNewer((take) => setActivate(() => take)), []);
  if (activate === null) return null;
  return (
    <p className="offline" role="status">
      <span>A newer Bedplate is on this phone.</span>
      <button type="button" onClick={activate}>
        Use it
      </button>
    </p>
  );
}
