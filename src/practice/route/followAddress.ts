import { mount } from 'svelte';
import { showTheme } from '../../panel/index.ts';
import Frame from './Frame.svelte';

/** Opens the workplace that the address names, and the next one when it changes. */
export function followAddress(place: HTMLElement): void {
  showTheme();
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', showTheme);
  mount(Frame, { target: place });
}
