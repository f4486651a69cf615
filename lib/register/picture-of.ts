/** What a photograph is of: exactly one of the two, which the database checks. */
export interface PictureOf {
  thing: 'set' | 'motor';
  id: string;
}

/** The same as the columns of a row. */
export const pictureOf = ({ thing, id }: PictureOf) =>
  thing === 'set' ? { setId: id, motorId: null } : { setId: null, motorId: id };
