import { askedBy } from '@/app/api/v1/asked-by';
import { problem } from '@/app/api/v1/problem';
import { pictureById } from '@/lib/register/queries/picture-by-id';
import { PICTURE_POLICY } from '../picture-policy';

/** A photograph as it is kept. One of another site is answered as one that never was. */
export const GET = (request: Request, { params }: { params: Promise<{ id: string }> }) =>
  askedBy(request, 'register.read', async (actor) => {
    const { id } = await params;
    const picture = await pictureById(actor, id);
    if (picture === null) return problem(404, 'No such picture.');
    return new Response(picture.content, {
      headers: {
        'content-type': picture.mediaType,
        'content-disposition': `inline; filename="${id}.${picture.mediaType.replace('image/', '')}"`,
        'content-security-policy': PICTURE_POLICY,
        'x-content-type-options': 'nosniff',
        'cross-origin-resource-policy': 'same-origin',
        'cache-control': 'private, no-store',
      },
    });
  });
