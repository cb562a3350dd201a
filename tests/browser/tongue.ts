import { english as englishLabels } from '../../src/panel/words/en/index.ts';
import { spanish as spanishLabels } from '../../src/panel/words/es/index.ts';
import type { Catalogue } from '../../src/text/catalogue.ts';
import { english, speakBy, voiceOf, type Language } from '../../src/text/index.ts';
import { spanish } from '../../src/text/messages/es/index.ts';
import { shelf } from '../../src/text/shelf.ts';
import { exercise } from '../scenario/exercise.ts';

/**
 * A crew member's language. The script of the job is written once, in the English words of the screen; in another
 * language every label is looked up in the product's own catalogues, never typed a second time.
 */
export interface Tongue {
  readonly language: Language;
  /** The words on the screen for an English label such as `Chain A, left tensioner: 1/12 turn tighter`. */
  readonly label: (english: string) => string;
  /** What the log says when the thing waited for has come. */
  readonly says: Says;
}

interface Says {
  readonly noBubbles: RegExp;
  readonly noPuff: RegExp;
  readonly blows: RegExp;
  readonly wentQuiet: RegExp;
  readonly hasHold: RegExp;
  readonly plugFree: RegExp;
  readonly teeFree: RegExp;
  readonly stopperLeft: RegExp;
  readonly ringPasses: RegExp;
  readonly hindered: RegExp;
}

const { job } = exercise();
const catalogues = { en: english, es: spanish } as const;
const labels = { en: englishLabels, es: spanishLabels } as const;
const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
const exactly = (...texts: string[]): RegExp => new RegExp(texts.map(escaped).join('|'));

function speaking<T>(language: Language, worded: () => T): T {
  shelf.set('es', spanish);
  speakBy(() => language);
  const said = worded();
  speakBy(() => 'en');
  return said;
}

function saysIn(language: Language): Says {
  return speaking(language, () => {
    const words: Catalogue = catalogues[language];
    const { fact, speech } = voiceOf(job, 'si');
    const bleed = (puff: boolean): string =>
      fact({ fact: 'bleed.turned', atS: 0, openRad: 1, aboveGaugePa: 0, puff, levelDb: 0 });
    const afterColon = (text: string): string => text.slice(text.lastIndexOf(': '));
    const engaged = Object.keys(words.felt.loads).map((load) =>
      words.facts['rod.engaged']({ fact: 'rod.engaged', atS: 0, with: load }, speech),
    );
    const quiet = fact({ fact: 'bleed.quiet', atS: 0, hissedS: 1, aboveGaugePa: 0 });
    return {
      noBubbles: exactly(words.bubbles.none),
      noPuff: exactly(afterColon(bleed(false))),
      blows: exactly(afterColon(bleed(true))),
      wentQuiet: exactly(quiet.slice(0, quiet.indexOf('1 s'))),
      hasHold: exactly(...engaged),
      plugFree: exactly(
        fact({ fact: 'plug.free', atS: 0, chamberClosed: true, differenceGaugePa: 0, thrustN: 0 }),
      ),
      teeFree: exactly(fact({ fact: 'tee.free', atS: 0, chamberClosed: true, thrustN: 0 })),
      stopperLeft: exactly(fact({ fact: 'stopper.left', atS: 0, belowPortM: 0, torqueNm: 0 })),
      ringPasses: exactly(fact({ fact: 'gaugeRing.tried', atS: 0, passes: true, sweptM: 0 })),
      hindered: exactly(labels[language]['log.hindered'].replace('{why}', '')),
    };
  });
}

/** Every pair of plain sentences of the two languages, English first; the screens' own labels lead. */
function* pairs(one: unknown, other: unknown): Generator<readonly [string, string]> {
  if (typeof one === 'string' && typeof other === 'string') yield [one, other];
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return;
  const theirs = new Map(Object.entries(other));
  for (const [key, value] of Object.entries(one)) yield* pairs(value, theirs.get(key));
}

function* pieceNames(): Generator<readonly [string, string]> {
  const named = (language: Language): string[] =>
    speaking(language, () => {
      const voice = voiceOf(job);
      return job.kit.flatMap(({ id }) => [voice.piece(id), voice.speech.piece(id)]);
    });
  const ours = named('en');
  const theirs = named('es');
  for (let i = 0; i < ours.length; i += 1) yield [ours[i], theirs[i]];
}

const dictionary = new Map<string, string>();
const patterns: { readonly match: RegExp; readonly slots: readonly string[]; readonly into: string }[] = [];
for (const source of [pairs(englishLabels, spanishLabels), pairs(english, spanish), pieceNames()]) {
  for (const [one, other] of source) {
    if (!dictionary.has(one)) dictionary.set(one, other);
    const slots = [...one.matchAll(/\{(\w+)\}/g)].map((found) => found[1]);
    if (slots.length === 0 || one.replace(/\{\w+\}/g, '').trim().length < 2) continue;
    const match = new RegExp(`^${escaped(one).replace(/\\\{\w+\\\}/g, '(.+)')}$`);
    patterns.push({ match, slots, into: other });
  }
}

/* The longest wording is the closest one: `Chain {letter}, left tensioner` before `Chain {letter}`. */
patterns.sort((a, b) => b.match.source.length - a.match.source.length);

function intoSpanish(text: string): string {
  const known = dictionary.get(text);
  if (known !== undefined) return known;
  const parts = text.split(': ');
  if (parts.length > 1) return parts.map(intoSpanish).join(': ');
  const turns = /^([\d/ ]+) turns?$/.exec(text);
  if (turns !== null) return `${turns[1]} ${/^(1|\d+\/\d+)$/.test(turns[1]) ? 'vuelta' : 'vueltas'}`;
  for (const { match, slots, into } of patterns) {
    const found = match.exec(text);
    if (found === null) continue;
    return slots.reduce((said, slot, i) => said.replace(`{${slot}}`, intoSpanish(found[i + 1])), into);
  }
  if (/^[\d.,]+( (s|min|mm|kPa|N·m))?$|^[A-Z]\d*$|^mm$/.test(text)) return text.replace('.', ',');
  throw new Error(`The catalogues have no Spanish for "${text}"`);
}

export const inEnglish: Tongue = { language: 'en', label: (text) => text, says: saysIn('en') };
export const inSpanish: Tongue = { language: 'es', label: intoSpanish, says: saysIn('es') };
