import { troubles } from './troubles.ts';
import type { Catalogue } from '../../catalogue.ts';
import { actions } from './actions.ts';
import { conditions } from './conditions.ts';
import { evidenceItems } from './evidence.ts';
import { facts, felt } from './facts.ts';
import { findings } from './findings/index.ts';
import { defects, numbered, pieces, the } from './pieces.ts';
import {
  bubbles,
  cleanPlaces,
  detectorPlaces,
  gauges,
  hindrances,
  leakPlaces,
  lookPlaces,
  markPlaces,
  measures,
  recordFields,
  referReasons,
  siteTasks,
} from './places.ts';
import { plain } from './plain.ts';
import { sensed } from './sensed.ts';
import { endings, headings, holdPoints, outcomes, safeStates, stages, verdicts } from './work.ts';

/** All that is said in English. */
export const english = {
  actions,
  bubbles,
  cleanPlaces,
  conditions,
  defects,
  detectorPlaces,
  endings,
  evidenceItems,
  facts,
  felt,
  findings,
  gauges,
  headings,
  hindrances,
  holdPoints,
  leakPlaces,
  lookPlaces,
  markPlaces,
  measures,
  numbered,
  outcomes,
  pieces,
  plain,
  problem: (says) => says,
  recordFields,
  referReasons,
  safeStates,
  sensed,
  siteTasks,
  stages,
  the,
  troubles,
  verdicts,
} satisfies Catalogue;
