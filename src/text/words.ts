import type { Catalogue } from './catalogue.ts';
import { spoken } from './language.ts';
import { english } from './messages/en/index.ts';
import { shelf } from './shelf.ts';

/** All that can be said in the language of the moment; English until that language has been fetched. */
export function words(): Catalogue {
  return shelf.get(spoken()) ?? english;
}
