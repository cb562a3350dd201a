import type { Rule } from '../case.ts';
import { abnormalRules } from './abnormalRules.ts';
import { chainRules } from './chainRules.ts';
import { cleaningRules } from './cleaningRules.ts';
import { closingRules } from './closingRules.ts';
import { cuttingRules } from './cuttingRules.ts';
import { gasRules } from './gasRules.ts';
import { holdBackRules } from './holdBackRules.ts';
import { endingRules, holdPointRules } from './holdPointRules.ts';
import { jointRules } from './jointRules.ts';
import { kitRules } from './kitRules.ts';
import { openingRules } from './openingRules.ts';
import { plugRules } from './plugRules.ts';
import { proofRules } from './proofRules.ts';
import { renewalRules } from './renewalRules.ts';
import { rodRules } from './rodRules.ts';
import { stopperRules } from './stopperRules.ts';
import { valveRules } from './valveRules.ts';

/** Every rule. Their order means nothing: charging sorts by gravity. */
export const rules: readonly Rule[] = [
  holdPointRules,
  endingRules,
  gasRules,
  openingRules,
  chainRules,
  plugRules,
  holdBackRules,
  valveRules,
  rodRules,
  jointRules,
  proofRules,
  stopperRules,
  cuttingRules,
  closingRules,
  renewalRules,
  cleaningRules,
  kitRules,
  abnormalRules,
];
