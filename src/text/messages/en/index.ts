import type { Catalogue } from '../../catalogue.ts';
import { actions } from './actions.ts';
import { conditions, evidenceItems } from './evidence.ts';
import { facts } from './facts.ts';
import { findings } from './findings/index.ts';
import { defects, pieces } from './pieces.ts';
import * as places from './places.ts';
import { plain } from './plain.ts';
import * as work from './work.ts';

export const english = {
  ...places,
  ...work,
  actions,
  conditions,
  evidenceItems,
  facts,
  findings,
  pieces,
  defects,
  plain,
} satisfies Catalogue;
