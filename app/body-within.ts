/** The body of a request, read no further than `mostBytes`; null when there is more. */
export async function bodyWithin(request: Request, mostBytes: number): Promise<Buffer | null> {
  // A length that is claimed is believed only against the sender.
  if (Number(request.headers.get('content-length')) > mostBytes) return null;
  const parts: Uint8Array[] = [];
  let length = 0;
  if (request.body !== null)
    for await (const part of request.body as unknown as AsyncIterable<Uint8Array>) {
      length += part.length;
      if (length > mostBytes) return null;
      parts.push(part);
    }
  return Buffer.concat(parts);
}
