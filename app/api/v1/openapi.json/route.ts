import { askedBy } from '../asked-by';
import { openApiDocument } from '../document';
import { documentOp } from '../operations/document';
import { answer } from '../problem';

/** The document of this API. It is made when it is asked for the first time and is the same for everybody. */
export const GET = (request: Request) => askedBy(request, documentOp.action, async () => answer(theDocument()));

let made: ReturnType<typeof openApiDocument> | null = null;
const theDocument = () => {
  made ??= openApiDocument();
  return made;
};
