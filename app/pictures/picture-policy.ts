/** The content security policy of a picture at its own address: whatever a browser took it for, nothing in it runs. */
export const PICTURE_POLICY = "sandbox; default-src 'none'";

/** Which addresses that are. */
export const isPicturePath = (path: string): boolean => /^\/pictures\/[^/]+$/.test(path);
