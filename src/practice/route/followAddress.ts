import { mount } from 'svelte';
import { followLanguage, showLanguage, showPreferences } from '../../panel/index.ts';
import Frame from './Frame.svelte';
import type { Workplaces } from './workplaces.ts';

/** Opens the workplace that the address names, and the next one when it changes; `others` says how the rest are fetched. */
export function followAddress(place: HTMLElement, others: Workplaces): void {
  showPreferences();
  for (const wish of [
    '(prefers-color-scheme: dark)',
    '(prefers-contrast: more)',
    '(prefers-reduced-motion: reduce)',
  ])
    matchMedia(wish).addEventListener('change', showPreferences);
  followLanguage();
  const open = (): void => void mount(Frame, { target: place, props: { others } });
  showLanguage(true).then(open, open);
}
