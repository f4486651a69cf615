/** What a form says whose person is no longer signed in: what was typed must not be lost on the way to the sign-in. */
export const SIGNED_OUT =
  'You are no longer signed in. Nothing was recorded. Sign in on another page of this browser, then send this again.';
