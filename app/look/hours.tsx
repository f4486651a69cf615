import { clockOf } from './words';

/** Hours of work, large: the second thing anybody looks for. Null shows nothing. */
export function Hours({ hours }: { hours: number | null }) {
  if (hours === null) return <span className="hours" />;
  const { h, min } = clockOf(hours);
  return (
    <span className="hours">
      {h}
      <small>h</small>
      {min}
    </span>
  );
}
