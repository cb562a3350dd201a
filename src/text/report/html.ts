/** A piece of HTML that is known to be sound: text in it has been escaped. */
export interface Html {
  readonly html: string;
}
type Content = string | number | boolean | null | undefined | Html | readonly Content[];

/** A template whose values are escaped unless they are HTML themselves. What is null, undefined or true or false is written as nothing. */
export function html(parts: TemplateStringsArray, ...values: readonly Content[]): Html {
  return { html: parts.reduce((made, part, i) => made + textOf(values[i - 1]) + part) };
}

function textOf(value: Content): string {
  if (value === null || value === undefined || typeof value === 'boolean') return '';
  if (typeof value === 'number') return String(value);
  if (typeof value === 'string') return escaped(value);
  return 'html' in value ? value.html : value.map(textOf).join('');
}

function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}
