/** What the codes in a picture hold: a frame of the camera or a photograph, drawn on a canvas. */
export type FindCode = (canvas: HTMLCanvasElement) => Promise<string[]>;
