import { spoken, type Language } from './language.ts';

/** How numbers and turns are written. Small, so that a page that shows only figures need not fetch every sentence. */
interface FigureWords {
  readonly mark: '.' | ',';
  readonly turn: string;
  readonly turns: string;
  readonly noTurn: string;
}

const table: Readonly<Record<Language, FigureWords>> = {
  en: { mark: '.', turn: 'turn', turns: 'turns', noTurn: 'no turn' },
  es: { mark: ',', turn: 'vuelta', turns: 'vueltas', noTurn: 'ni una vuelta' },
};

/** The words of the language of the moment. */
export const figureWords = (): FigureWords => table[spoken()];

/** A number to so many decimals, with the language's decimal mark; minus zero is written as zero. */
export function decimals(value: number, places: number): string {
  const text = value.toFixed(places);
  const plain = /^-0(\.0*)?$/.test(text) ? text.slice(1) : text;
  return plain.replace('.', figureWords().mark);
}
