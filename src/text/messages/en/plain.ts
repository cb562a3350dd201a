import { twin } from './twin.ts';

/** Sentences that stand by themselves on a screen, in a report or on the command line. */
export const plain = {
  'caution.trains': 'Stillmain trains; it does not qualify anybody.',
  'caution.first': 'The operator’s written procedure, local codes and licensed practice come first.',
  'caution.limits':
    'Times, torques and pressures of this exercise are its own settings, not rules for the field.',
  'caution.tamper':
    'The hash chain shows whether a file was changed after it was sealed. It does not prove who made it.',
  'scenario.pass': '{title}: score {score}, least to pass {cut}.',
  'run.same': 'Judged again, the same to the last bit.',
  'run.differs': 'Judged again, and it ends differently from what the file says.',
  'run.altered': 'Changed after sealing: action {number} is the first that does not fit.',
  'run.otherEngine': 'Made by another engine ({engine}): its actions are shown, not judged again.',
  'hold.signed': 'Signed',
  'hold.open': 'Open',
  'hold.guards': 'Guards {work}.',
  'hint.none': 'Nothing is due. Look round before you go on.',
  ...prefixed(twin),
} as const;

/** Twin sentences under their own prefix, so that a screen can name them too. */
function prefixed<T extends Readonly<Record<string, string>>>(
  group: T,
): { readonly [K in keyof T & string as `twin.${K}`]: T[K] } {
  const entries = Object.entries(group).map(([key, value]) => [`twin.${key}`, value]);
  return Object.fromEntries(entries) as { readonly [K in keyof T & string as `twin.${K}`]: T[K] };
}
