/** The id of the control that works at a place of the document, so that an error can lead to it. */
export const idOfPlace = (path: string): string => `at-${path}`;

/** Brings the control at a place, or the nearest one around it, before the person's eyes and under the keys. */
export function goToPlace(path: string): void {
  for (let at = path; at !== ''; at = around(at)) {
    const found = document.getElementById(idOfPlace(at));
    if (found === null) continue;
    found.scrollIntoView({ block: 'center' });
    const control = found.matches('input, select, textarea, button, a, [tabindex]')
      ? found
      : found.querySelector<HTMLElement>('input, select, textarea, button');
    control?.focus({ preventScroll: true });
    return;
  }
}

function around(path: string): string {
  const end = Math.max(path.lastIndexOf('.'), path.lastIndexOf('['));
  return end < 0 ? '' : path.slice(0, end);
}
