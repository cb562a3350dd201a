import { mount } from 'svelte';
import { followLanguage, showLanguage, showPreferences } from '../../panel/index.ts';
import Frame from './Frame.svelte';

/** Opens the workplace that the address names, and the next one when it changes. */
export function followAddress(place: HTMLElement): void {
  showPreferences();
  for (const wish of [
    '(prefers-color-scheme: dark)',
    '(prefers-contrast: more)',
    '(prefers-reduced-motion: reduce)',
  ])
    matchMedia(wish).addEventListener('change', showPreferences);
  followLanguage();
  const open = (): void => void mount(Frame, { target: place });
  showLanguage(true).then(open, open);
}
