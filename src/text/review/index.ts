export { sayPlace, saySurvived } from './place.ts';
export { reviewWords } from './words/index.ts';
