import { scenarioJsonSchema } from '../../core/scenario/index.ts';
import { stepsOf } from './path.ts';

/** What the document's own schema says of an entry: its bounds and what may stand there. */
export interface Rule {
  readonly minimum?: number;
  readonly maximum?: number;
  readonly maxLength?: number;
  readonly choices?: readonly string[];
}

interface Schema {
  readonly minimum?: number;
  readonly maximum?: number;
  readonly maxLength?: number;
  readonly enum?: readonly unknown[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema | readonly Schema[];
  readonly prefixItems?: readonly Schema[];
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
}

let whole: Schema | null = null;

/** The rule at a place. The bounds of a form are thus those that the reader of files holds it to. */
export function ruleAt(path: string): Rule {
  whole ??= scenarioJsonSchema();
  const found = stepsOf(path).reduce<Schema | undefined>(
    (schema, step) => (schema === undefined ? undefined : below(schema, step)),
    whole,
  );
  const { minimum, maximum, maxLength, enum: listed } = plain(found ?? {});
  const choices = listed?.filter((one) => typeof one === 'string');
  return { minimum, maximum, maxLength, choices };
}

function below(schema: Schema, step: string | number): Schema | undefined {
  const { properties, items, prefixItems, anyOf, oneOf } = schema;
  if (typeof step === 'string' && properties?.[step] !== undefined) return properties[step];
  if (typeof step === 'number') {
    const list = prefixItems ?? (isList(items) ? items : undefined);
    if (list !== undefined) return list[step];
    if (items !== undefined && !isList(items)) return items;
  }
  for (const way of anyOf ?? oneOf ?? []) {
    const found = below(way, step);
    if (found !== undefined) return found;
  }
  return undefined;
}

function isList(items: Schema['items']): items is readonly Schema[] {
  return Array.isArray(items);
}

/** Where null may stand too, the rule is that of what is not null. */
function plain(schema: Schema): Schema {
  const ways = schema.anyOf ?? schema.oneOf;
  return ways?.find((way) => way.minimum !== undefined || way.enum !== undefined) ?? schema;
}
