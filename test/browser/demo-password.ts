/** The tests' own demonstration: its people are those of seed/accounts.json. */
export const demoPassword = 'heron-quarry-lantern';
