/** Where things are. Tags and numbers are anybody's text: slashes, spaces and signs are encoded. */
const within = (text: string) => encodeURIComponent(text);

export const setPath = (tag: string) => `/sets/${within(tag)}`;
export const failedPath = (tag: string) => `${setPath(tag)}/failed`;
export const faultPath = (faultId: string) => `/faults/${within(faultId)}`;
export const candidatesPath = (tag: string) => `${setPath(tag)}/candidates`;
export const candidatePath = (tag: string, motor: string) => `${candidatesPath(tag)}/${within(motor)}`;
export const swapFormPath = (tag: string, motor: string) => `${setPath(tag)}/swap/${within(motor)}`;
export const jobPath = (tag: string, motor: string) => `${setPath(tag)}/job/${within(motor)}`;
export const buyPath = (tag: string, rating: string) => `${setPath(tag)}/buy/${within(rating)}`;
export const nextPath = (tag: string) => `${setPath(tag)}/next`;
export const swapPath = (swapId: string) => `/swaps/${within(swapId)}`;
export const addReadingsPath = (swapId: string) => `${swapPath(swapId)}/readings`;
export const picturePath = (pictureId: string) => `/pictures/${within(pictureId)}`;
export const motorPath = (number: string) => `/motors/${within(number)}`;
export const motorEditPath = (number: string) => `${motorPath(number)}/edit`;
export const motorOnPath = (number: string) => `${motorPath(number)}/on`;
export const setOnPath = (tag: string) => `${setPath(tag)}/on`;
export const measuredPath = (tag: string) => `${setPath(tag)}/measured`;
export const setEditPath = (tag: string) => `${setPath(tag)}/edit`;
export const framePath = (frame: string) => `/frames/${within(frame)}`;
export const personPath = (userId: string) => `/people/${within(userId)}`;
export const findPath = (typed: string) => `/find?q=${within(typed)}`;

/** A part of a path as it was written before it was encoded, as one line; what cannot be decoded stays as it stands. */
export function written(part: string): string {
  try {
    return oneLine(decodeURIComponent(part));
  } catch {
    return oneLine(part);
  }
}

/** Anybody's text without control characters, which no tag has and the database refuses. */
export const oneLine = (text: string) => text.replace(/[\p{Cc}\p{Cs}]+/gu, ' ').trim();
