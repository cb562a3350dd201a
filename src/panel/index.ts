export { default as Caution } from './Caution.svelte';
export { default as Settings } from './Settings.svelte';
export { default as Hands } from './hands/Hands.svelte';
export { things } from './hands/things.ts';
export { default as Instruments } from './instruments/Instruments.svelte';
export { keepPreferences, preferences, showTheme } from './preferences.svelte.ts';
export { clockFigure, momentFigure, tell, type WordKey } from './words/index.ts';
