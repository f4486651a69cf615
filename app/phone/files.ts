// Put in by scripts/phone.mjs, which names files by their content.
declare const WORKER_PATH: string;
declare const ZXING_PATH: string;
export const workerPath = WORKER_PATH;
export const zxingPath = ZXING_PATH;
