import type { Action } from '../../core/rig/index.ts';
import type { WordKey } from '../../panel/index.ts';
import type { Sitting, SittingView } from '../../session/index.ts';

/** What shortcuts reach: the sitting, and places of the page. */
export interface Reach {
  readonly sitting: Sitting;
  readonly view: SittingView;
  readonly act: (action: Action) => void;
  readonly openSheet: () => void;
  readonly showCoach: () => void;
  readonly goTo: (place: 'hands' | 'order') => void;
  readonly nextWay: () => void;
  readonly toggleSound: () => void;
}

export interface Shortcut {
  readonly key: string;
  readonly does: WordKey;
  readonly run: (reach: Reach) => void;
}

const easeRad = 0.1;
const quarterRad = Math.PI / 2;

/**
 * Letters without Ctrl, Alt or the system's key, which browsers leave to the page. None of them is the only way to
 * anything, and all of them can be turned off.
 */
export const shortcuts: readonly Shortcut[] = [
  { key: '?', does: 'keys.sheet', run: ({ openSheet }) => openSheet() },
  {
    key: 'p',
    does: 'keys.clock',
    run: ({ sitting, view }) => (view.phase === 'held' ? sitting.go(1) : sitting.hold()),
  },
  { key: 'w', does: 'keys.waitShort', run: ({ sitting }) => void sitting.wait(10) },
  { key: 'm', does: 'keys.waitMinute', run: ({ sitting }) => void sitting.wait(60) },
  { key: 'q', does: 'keys.waitQuiet', run: ({ sitting }) => void sitting.waitUntilQuiet(600) },
  {
    key: 'h',
    does: 'keys.hold',
    run: ({ act, view }) => act({ kind: 'rod.hold', held: !view.run.rig.rod.held }),
  },
  {
    key: 'b',
    does: 'keys.bleed',
    run: ({ act, view }) =>
      act({ kind: 'bleed.turn', angleRad: view.run.rig.bleed.openRad > 0 ? -quarterRad : quarterRad }),
  },
  { key: 'v', does: 'keys.valve', run: ({ act }) => act({ kind: 'valve.turn', angleRad: easeRad }) },
  { key: 's', does: 'keys.valveShut', run: ({ act }) => act({ kind: 'valve.turn', angleRad: -quarterRad }) },
  { key: 'l', does: 'keys.listen', run: ({ act }) => act({ kind: 'listen' }) },
  {
    key: 'u',
    does: 'keys.undo',
    run: ({ sitting, view }) => {
      const last = view.entries.at(-1);
      if (last !== undefined) void sitting.rewind(last.atS);
    },
  },
  { key: 'n', does: 'keys.coach', run: ({ showCoach }) => showCoach() },
  { key: 'j', does: 'keys.hands', run: ({ goTo }) => goTo('hands') },
  { key: 'o', does: 'keys.order', run: ({ goTo }) => goTo('order') },
  { key: 't', does: 'keys.words', run: ({ nextWay }) => nextWay() },
  { key: 'x', does: 'keys.mute', run: ({ toggleSound }) => toggleSound() },
];

const typing = 'input:not([type=checkbox]), select, textarea, [contenteditable], dialog';

/** The shortcut a key press means, or null: where something is typed or chosen a letter is only a letter. */
export function shortcutOf(event: KeyboardEvent): Shortcut | null {
  if (event.ctrlKey || event.altKey || event.metaKey || event.repeat || event.defaultPrevented) return null;
  if (event.target instanceof Element && event.target.closest(typing) !== null) return null;
  return shortcuts.find(({ key }) => key === event.key.toLowerCase()) ?? null;
}
