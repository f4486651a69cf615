import type { WhoseLabels } from './labels-asked';

/** What was chosen before the page was opened, as the first of its choices. */
export function chosenWords({ asked, which }: WhoseLabels, all: number): string {
  if (asked === null || which !== '' || all === 0) return 'choose';
  switch (asked.by) {
    case 'name': {
      const names = [...asked.tags, ...asked.numbers];
      return names.length === 1 && all === 1 ? String(names[0]) : `the ${all} named`;
    }
    case 'sets':
      return all === 1 ? '1 set of the list' : `${all} sets of the list`;
    case 'motors':
      return all === 1 ? '1 motor of the list' : `${all} motors of the list`;
  }
}
