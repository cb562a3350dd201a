/** How this person likes to see things. Kept in this browser only; a run never depends on it. */
export interface Preferences {
  theme: 'system' | 'light' | 'dark';
  units: 'us' | 'si';
  coach: boolean;
  sound: boolean;
  /** How the rig is shown. */
  rig: 'picture' | 'both' | 'words';
}

const kept = 'stillmain.preferences';
const usual: Preferences = { theme: 'system', units: 'us', coach: true, sound: false, rig: 'picture' };

function readKept(): Preferences {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(kept) ?? '{}');
    if (typeof found !== 'object' || found === null) return usual;
    const entries = new Map(Object.entries(found));
    const theme = entries.get('theme');
    const units = entries.get('units');
    const rig = entries.get('rig');
    return {
      theme: theme === 'light' || theme === 'dark' ? theme : 'system',
      units: units === 'si' ? 'si' : 'us',
      coach: entries.get('coach') !== false,
      sound: entries.get('sound') === true,
      rig: rig === 'both' || rig === 'words' ? rig : 'picture',
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

/** The theme that a choice comes to on this system. */
export function themeShown(chosen: Preferences['theme']): 'light' | 'dark' {
  if (chosen !== 'system') return chosen;
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';
}

/** Puts the chosen theme, or the system's, on the document. */
export function showTheme(): void {
  document.documentElement.dataset.theme = themeShown(preferences.theme);
}
