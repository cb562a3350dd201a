export { sayPlace, saySurvived } from './place.ts';
export { saySaidOtherwise } from './said.ts';
export { reviewWords } from './words/index.ts';
