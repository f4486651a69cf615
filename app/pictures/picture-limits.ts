/** The largest picture that is taken, as it comes from a camera. */
export const MOST_PICTURE_MB = 15;

/** What a browser offers to choose from; what arrives is told by its bytes (lib/picture). */
export const PICTURE_TYPES: readonly string[] = ['image/jpeg', 'image/png', 'image/webp'];
