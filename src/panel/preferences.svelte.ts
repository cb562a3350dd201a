/** How this person likes to see things. Kept in this browser only; a run never depends on it. */
export interface Preferences {
  theme: 'system' | 'light' | 'dark';
  units: 'us' | 'si';
  coach: boolean;
  sound: boolean;
}

const kept = 'stillmain.preferences';
const usual: Preferences = { theme: 'system', units: 'us', coach: true, sound: false };

function readKept(): Preferences {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(kept) ?? '{}');
    if (typeof found !== 'object' || found === null) return usual;
    const entries = new Map(Object.entries(found));
    const theme = entries.get('theme');
    const units = entries.get('units');
    return {
      theme: theme === 'light' || theme === 'dark' ? theme : 'system',
      units: units === 'si' ? 'si' : 'us',
      coach: entries.get('coach') !== false,
      sound: entries.get('sound') === true,
    };
  } catch {
    return usual;
  }
}

/** The one set of preferences of this page; set a field and call `keepPreferences`. */
export const preferences = $state<Preferences>(readKept());

/** Keeps the preferences for the next visit. Storage that is refused only means they last for this one. */
export function keepPreferences(): void {
  try {
    localStorage.setItem(kept, JSON.stringify(preferences));
  } catch {
    return;
  } finally {
    showTheme();
  }
}

/** Puts the chosen theme, or the system's, on the document. */
export function showTheme(): void {
  const dark = preferences.theme === 'system' && matchMedia('(prefers-color-scheme: dark)').matches;
  document.documentElement.dataset.theme =
    preferences.theme === 'system' ? (dark ? 'dark' : 'light') : preferences.theme;
}
