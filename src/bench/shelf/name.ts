const most = 60;

/** A document's name made of a text: small letters, figures and dashes. */
export function nameFrom(text: string): string {
  const plain = text
    .toLowerCase()
    .normalize('NFD')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, most - 4)
    .replace(/-+$/, '');
  return plain.length < 3 ? `own-${plain}`.replace(/-+$/, '') : plain;
}
