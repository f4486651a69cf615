/** A value as JSON to be read: what fits on a line stands on one. */
export function jsonText(value: unknown, indent = '', before = 0): string {
  const line = oneLine(value);
  if (indent.length + before + line.length <= WIDTH || typeof value !== 'object' || value === null) return line;
  const inner = `${indent}  `;
  const parts = Array.isArray(value)
    ? value.map((one) => `${inner}${jsonText(one, inner)}`)
    : Object.entries(value).map(([key, one]) => {
        const name = `${JSON.stringify(key)}: `;
        return `${inner}${name}${jsonText(one, inner, name.length)}`;
      });
  const [open, close] = Array.isArray(value) ? ['[', ']'] : ['{', '}'];
  return `${open}\n${parts.join(',\n')}\n${indent}${close}`;
}

const WIDTH = 68;

function oneLine(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(oneLine).join(', ')}]`;
  const parts = Object.entries(value).map(([key, one]) => `${JSON.stringify(key)}: ${oneLine(one)}`);
  return parts.length === 0 ? '{}' : `{ ${parts.join(', ')} }`;
}
