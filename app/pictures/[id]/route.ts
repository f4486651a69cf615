import { z } from 'zod';
import { askedBy } from '@/app/api/v1/asked-by';
import { problem } from '@/app/api/v1/problem';
import { querySent } from '@/app/api/v1/query-sent';
import { small } from '@/lib/picture/small';
import { pictureById } from '@/lib/register/queries/picture-by-id';
import { PICTURE_POLICY } from '../picture-policy';

const question = z.strictObject({ size: z.literal('small').optional() });

/** A photograph as it is kept, or small for a list. One of another site is answered as one that never was. */
export const GET = (request: Request, { params }: { params: Promise<{ id: string }> }) =>
  askedBy(request, 'register.read', async (actor) => {
    const { id } = await params;
    const asked = querySent(request, question);
    if (asked instanceof Response) return asked;
    const picture = await pictureById(actor, id);
    if (picture === null) return problem(404, 'No such picture.');
    return new Response(asked.size === 'small' ? await small(picture.content) : picture.content, {
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
