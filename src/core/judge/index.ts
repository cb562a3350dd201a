export { judgeSet, type SetAssessment } from './set.ts';
export * from './types.ts';
export * from './catalogue.ts';
export { judge, type JudgedRecord } from './judge.ts';
export { assess, type RunAssessment } from './assess.ts';
export { defaultWeights, type JudgedRun } from './case.ts';
export { hundredths } from './charge.ts';
export { GAS_KG_PER_MOL, AIR_KG_PER_MOL } from './ledger.ts';
export { conditionsMet, type Condition } from './conditions.ts';
