import type { Catalogue } from '../../../catalogue.ts';
import { gasFindings } from './gas.ts';
import { holdPointFindings } from './holdPoints.ts';
import { abnormalFindings, endingFindings, kitFindings } from './kit.ts';
import { renewalFindings } from './renewal.ts';
import { laterTechniqueFindings, techniqueFindings } from './technique.ts';

/** What each finding of the judge says: what happened, why it matters, what to do. */
export const findings: Catalogue['findings'] = {
  ...holdPointFindings,
  ...gasFindings,
  ...techniqueFindings,
  ...laterTechniqueFindings,
  ...endingFindings,
  ...kitFindings,
  ...abnormalFindings,
  ...renewalFindings,
};
