/** A promise that is kept or broken when told to. */
export function promised<T>(): { promise: Promise<T>; keep: (value: T) => void; breakIt: (why: Error) => void } {
  let keep: (value: T) => void = never;
  let breakIt: (why: Error) => void = never;
  const promise = new Promise<T>((resolve, reject) => {
    keep = resolve;
    breakIt = reject;
  });
  return { promise, keep, breakIt };
}

const never = () => {
  throw new Error('a promise runs what makes it at once');
};
