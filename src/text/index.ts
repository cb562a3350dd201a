export * from './units.ts';
export * from './say.ts';
export * from './voice.ts';
export * from './twin/index.ts';
export type { Catalogue, FindingWords, HoldPointWords, Speech, StageWords } from './catalogue.ts';
export { english } from './messages/en/index.ts';
export { capital, listed } from './sentence.ts';
