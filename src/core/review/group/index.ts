export { wilson, type Interval } from './wilson.ts';
export { cronbachAlpha } from './alpha.ts';
export { cohenKappa, type Agreement } from './kappa.ts';
export { ebelBand, ebelBands, itemFigures, type EbelBand, type ItemFigures } from './items.ts';
export { attemptsOf, meanByAttempt, type PersonAttempts } from './attempts.ts';
export { groupOf, SMALL_GROUP, type Cell, type Group, type HoldPointFigures } from './group.ts';
export { agreementOf } from './agreement.ts';
