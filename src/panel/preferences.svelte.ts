import { languages, type Language } from '../text/index.ts';

export const languageChoices = ['system', ...languages] as const;
export const themeChoices = ['system', 'light', 'dark', 'contrast'] as const;
export const unitChoices = ['us', 'si'] as const;
export const motionChoices = ['system', 'less', 'full'] as const;
export const qualityChoices = ['auto', 'full', 'plain'] as const;
/** How far the coach goes: by what was held before, always, only when asked, or not at all. */
export const coachChoices = ['fading', 'shown', 'asked', 'off'] as const;
export const rigChoices = ['picture', 'both', 'words'] as const;
/** Sizes of text, per cent of the browser's own. */
export const textSizes = [100, 110, 125, 150] as const;

/** How this person likes to see and hear things. Kept in this browser only; a run never depends on it. */
export interface Preferences {
  language: (typeof languageChoices)[number];
  theme: (typeof themeChoices)[number];
  units: (typeof unitChoices)[number];
  motion: (typeof motionChoices)[number];
  textPercent: (typeof textSizes)[number];
  quality: (typeof qualityChoices)[number];
  coach: (typeof coachChoices)[number];
  sound: boolean;
  /** Share of full loudness, 0 to 1. */
  volume: number;
  captions: boolean;
  /** Single-key shortcuts. */
  keys: boolean;
  /** The guided tour was seen to its end or skipped. */
  toured: boolean;
  /** How the rig is shown. */
  rig: (typeof rigChoices)[number];
  /** Who works here, as last given before a run; empty where nobody gave a name. */
  person: string;
}

/** Longest name a run's file takes. */
export const longestName = 120;

const kept = 'stillmain.preferences';
const usual: Preferences = {
  language: 'system',
  theme: 'system',
  units: 'us',
  motion: 'system',
  textPercent: 100,
  quality: 'auto',
  coach: 'fading',
  sound: false,
  volume: 0.7,
  captions: true,
  keys: true,
  toured: false,
  rig: 'picture',
  person: '',
};

/** Takes what was kept for what it is: anything not among the choices gives way to what is usual. */
export function parsePreferences(found: unknown): Preferences {
  const entries: Readonly<Record<string, unknown>> = typeof found === 'object' ? { ...found } : {};
  const oneOf = <T>(name: string, choices: readonly T[], other: T): T =>
    choices.find((choice) => choice === entries[name]) ?? other;
  const onOff = (name: 'sound' | 'captions' | 'keys' | 'toured'): boolean =>
    oneOf(name, [true, false], usual[name]);
  const { volume, person } = entries;
  return {
    language: oneOf('language', languageChoices, usual.language),
    theme: oneOf('theme', themeChoices, usual.theme),
    units: oneOf('units', unitChoices, usual.units),
    motion: oneOf('motion', motionChoices, usual.motion),
    textPercent: oneOf('textPercent', textSizes, usual.textPercent),
    quality: oneOf('quality', qualityChoices, usual.quality),
    coach: oneOf('coach', coachChoices, entries.coach === false ? 'off' : usual.coach),
    sound: onOff('sound'),
    volume: typeof volume === 'number' && volume >= 0 && volume <= 1 ? volume : usual.volume,
    captions: onOff('captions'),
    keys: onOff('keys'),
    toured: onOff('toured'),
    rig: oneOf('rig', rigChoices, usual.rig),
    person: typeof person === 'string' ? person.slice(0, longestName) : usual.person,
  };
}

function readKept(): Preferences {
  try {
    return parsePreferences(JSON.parse(localStorage.getItem(kept) ?? '{}'));
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
    showPreferences();
  }
}

/** The theme that a choice comes to on this system. */
export function themeShown(chosen: Preferences['theme']): 'light' | 'dark' | 'contrast' {
  if (chosen !== 'system') return chosen;
  if (matchMedia('(prefers-contrast: more)').matches) return 'contrast';
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';
}

/** True when movement is to be kept to what is needed, by choice or by the system. */
export function movesLess(chosen: Preferences['motion']): boolean {
  if (chosen !== 'system') return chosen === 'less';
  return matchMedia('(prefers-reduced-motion: reduce)').matches;
}

/** The language that a choice comes to in this browser. */
export function languageShown(chosen: Preferences['language'], asked: readonly string[]): Language {
  if (chosen !== 'system') return chosen;
  const first = asked
    .map((tag) => tag.toLowerCase().split('-')[0])
    .map((tag) => languages.find((language) => language === tag))
    .find((language) => language !== undefined);
  return first ?? 'en';
}

/** Puts theme, movement and size of text on the document. */
export function showPreferences(): void {
  const root = document.documentElement;
  root.dataset.theme = themeShown(preferences.theme);
  root.dataset.motion = movesLess(preferences.motion) ? 'less' : 'full';
  root.style.fontSize = `${preferences.textPercent}%`;
}
