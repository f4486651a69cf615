/** How it stands with the network and the person, as the page shows it. */
export const state = { isSignedOut: false, problem: null as string | null };
