import { toJsonSchema } from '@valibot/to-json-schema';
import { scenarioSchema } from './schema.ts';

/** The exercise document's JSON Schema (draft 2020-12). What only the whole document can show is not in it. */
export function scenarioJsonSchema(): object {
  return toJsonSchema(scenarioSchema, { target: 'draft-2020-12', ignoreActions: ['finite'] });
}
