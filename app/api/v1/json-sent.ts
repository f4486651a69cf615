import { bodyWithin } from '@/app/body-within';
import { jsonText } from '@/lib/plant/json-text';
import { problem } from './problem';

const MOST_MB = 2;

/** The text of a JSON body of one of the types, read no further than the limit; or the answer that refuses it. */
export async function jsonSent(
  request: Request,
  types: readonly string[] = ['application/json'],
  mostMb: number = MOST_MB,
): Promise<string | Response> {
  const type = request.headers.get('content-type')?.split(';')[0]?.trim().toLowerCase();
  if (type === undefined || !types.includes(type)) return problem(415, `Send the body as ${types.join(' or ')}.`);
  const body = await bodyWithin(request, mostMb * 1024 * 1024);
  if (body === null) return problem(413, `The body is larger than ${mostMb} MB.`);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(body);
  } catch {
    return problem(400, 'The body is not UTF-8 text.');
  }
}

/** The same as a value, with the text that it was read from. */
export async function valueSent(
  request: Request,
  types: readonly string[],
  mostMb: number = MOST_MB,
): Promise<{ text: string; value: unknown } | Response> {
  const text = await jsonSent(request, types, mostMb);
  if (text instanceof Response) return text;
  const json = jsonText(text);
  return json.ok ? { text, value: json.value } : problem(400, 'The body is not JSON.', json.problems);
}
