/** What a photograph is of. One of a fault is of the fault's set too. */
export interface PictureOf {
  thing: 'set' | 'motor' | 'fault';
  id: string;
}

/** The same as the columns of a row by which it is found. */
export function pictureOf({ thing, id }: PictureOf) {
  switch (thing) {
    case 'set':
      return { setId: id };
    case 'motor':
      return { motorId: id };
    case 'fault':
      return { faultId: id };
  }
}
