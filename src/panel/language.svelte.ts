import { fetchWords, speakBy, type Language } from '../text/index.ts';
import { languageShown, preferences } from './preferences.svelte.ts';
import { fetchLabels } from './words/tell.ts';

let shown = $state.raw<Language>('en');

/** Makes every sentence follow this page's language: what is on the screen is worded anew when it changes. */
export function followLanguage(): void {
  speakBy(() => shown);
}

/**
 * Fetches the language that is asked for and shows it. `screensOnly` leaves the rig's own sentences for when a rig
 * is first to be seen, so that the start page stays light. Rejects, and shows what was shown, where it cannot be had.
 */
export async function showLanguage(screensOnly = false): Promise<void> {
  const wanted = languageShown(preferences.language, navigator.languages);
  await Promise.all([fetchLabels(wanted), screensOnly ? null : fetchWords(wanted)]);
  shown = wanted;
  document.documentElement.lang = wanted;
}
