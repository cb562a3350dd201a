import { twin } from './twin.ts';

/** Sentences that stand by themselves on a screen, in a report or on the command line. */
export const plain = {
  'caution.trains': 'Stillmain trains; it does not qualify anybody.',
  'caution.first': 'The operator’s written procedure, local codes and licensed practice come first.',
  'caution.limits':
    'Times, torques and pressures of this exercise are its own settings, not rules for the field.',
  'scenario.pass': '{title}: score {score}, least to pass {cut}.',
  'run.altered': 'Changed after sealing: action {number} is the first that does not fit.',
  ...prefixed(twin),
} as const;

/** Twin sentences under their own prefix, so that a screen can name them too. */
function prefixed<T extends Readonly<Record<string, string>>>(
  group: T,
): { readonly [K in keyof T & string as `twin.${K}`]: T[K] } {
  const entries = Object.entries(group).map(([key, value]) => [`twin.${key}`, value]);
  return Object.fromEntries(entries) as { readonly [K in keyof T & string as `twin.${K}`]: T[K] };
}
