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

/** The same name, or the first with a number behind it that is not taken. */
export function freeName(name: string, taken: readonly string[]): string {
  let free = name;
  for (let n = 2; taken.includes(free); n += 1) free = `${name.slice(0, most - 4)}-${n}`;
  return free;
}
