export { actsOf, type Act } from './acts.ts';
export { isPaper } from './keys.ts';
export { sensitivity, type Miss, type NoticingOptions, type NoticingResult } from './sensitivity.ts';
export { expectedOf, type Expected } from './rules/index.ts';
