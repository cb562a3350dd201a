import type { FaultId, Meaning } from '../../../core/faults/index.ts';
import { decimals } from '../../figures.ts';
import type { Language } from '../../language.ts';
import { percent, turnsOf, type Units } from '../../units.ts';
import { faultWords, type FaultWords } from '../words.ts';
import type { MeaningWords } from './words.ts';

/** All that is said of faults in a language, what they come to included. */
export interface FaultSpeech {
  readonly faults: FaultWords;
  readonly meanings: MeaningWords;
}

export async function faultSpeech(language: Language): Promise<FaultSpeech> {
  const meanings =
    language === 'es' ? (await import('./es.ts')).spanishMeanings : (await import('./en.ts')).englishMeanings;
  return { faults: await faultWords(language), meanings };
}

/**
 * What a fault of so much comes to, as one sentence with the figures the model worked out; of a fault without figures,
 * what it is. Quick: it may follow a slider.
 */
export function sayMeaning(
  id: FaultId,
  { says, numbers, unit }: Meaning,
  { faults, meanings }: FaultSpeech,
  units: Units,
): string {
  const sentence = says === 'asPlanted' ? meanings.byFault[id] : meanings.byCost[says];
  if (sentence === undefined) return faults[id].what;
  const worded = slots(numbers, unit, units);
  return sentence.replace(/\{(\w+)\}/g, (slot, name: string) => worded[name]?.() ?? slot);
}

type Slots = Readonly<Partial<Record<string, () => string>>>;

function slots(numbers: Meaning['numbers'], unit: Meaning['unit'], units: Units): Slots {
  const aMinute = (paPerS: number): string => units.difference(paPerS * 60);
  const { size } = numbers;
  return {
    first: () => aMinute(numbers.firstPaPerS),
    second: () => aMinute(numbers.secondPaPerS),
    rises: () => aMinute(numbers.risesPaPerS),
    lost: () => units.mass(numbers.kgPerS * 3600),
    lel: () => percent(numbers.lelShare),
    pa: () => units.difference(numbers.pa),
    share: () => decimals(numbers.share, 1),
    main: () => units.pressure(numbers.mainGaugePa),
    at: () => units.pressure(size),
    left: () => percent(1 - size),
    size: () => sizeOf(size, unit, units),
  };
}

/** A severity in the unit it is counted in. */
function sizeOf(size: number, unit: Meaning['unit'], units: Units): string {
  switch (unit) {
    case 'm':
      return units.length(size);
    case 'Nm':
      return units.torque(size);
    case 'Pa':
      return units.difference(size);
    case 'V':
      return `${decimals(size, 0)} V`;
    case 'turns':
      return turnsOf(size);
    case 'share':
      return percent(size);
    default:
      return decimals(size, 1);
  }
}
