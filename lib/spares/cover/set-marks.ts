/** Sets noted down for one kind of shelf motor, a bit each, by their numbers. */
export interface SetMarks {
  add: (number: number) => void;
  has: (number: number) => boolean;
}

export function setMarks(): SetMarks {
  let words = new Uint32Array(8);
  return {
    add: (number) => {
      const at = number >>> 5;
      if (at >= words.length) {
        const more = new Uint32Array(Math.max(at + 1, words.length * 2));
        more.set(words);
        words = more;
      }
      words[at] = (words[at] as number) | (1 << (number & 31));
    },
    has: (number) => (((words[number >>> 5] ?? 0) >>> (number & 31)) & 1) === 1,
  };
}

/** A number for each set, from 0, the same as long as it is kept. */
export interface SetNumbers {
  of: (setId: string) => number;
  count: () => number;
}

export function setNumbers(): SetNumbers {
  const numbers = new Map<string, number>();
  return {
    of: (setId) => {
      const known = numbers.get(setId);
      if (known !== undefined) return known;
      numbers.set(setId, numbers.size);
      return numbers.size - 1;
    },
    count: () => numbers.size,
  };
}
