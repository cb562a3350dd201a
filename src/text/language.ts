/** Languages the product speaks. English is the one it was written in and is always there. */
export const languages = ['en', 'es'] as const;
export type Language = (typeof languages)[number];

let source: () => Language = () => 'en';

/**
 * Says from where the language of the moment is taken. A screen gives a source that it follows itself, so that every
 * sentence already shown is worded anew when the language changes; the command line gives none and speaks English.
 */
export function speakBy(asked: () => Language): void {
  source = asked;
}

/** The language of the moment. */
export const spoken = (): Language => source();
