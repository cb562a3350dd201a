import { scenarioJsonSchema } from '../../src/core/scenario/index.ts';
import type { Chance } from '../../src/cli/bench/randomActions.ts';

/** The words of JSON Schema that the published schema is written in. */
interface Node {
  readonly $ref?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Node[];
  readonly oneOf?: readonly Node[];
  readonly type?: string;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly required?: readonly string[];
  readonly items?: Node | false;
  readonly prefixItems?: readonly Node[];
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly pattern?: string;
  readonly maxLength?: number;
}

const schema = scenarioJsonSchema() as Node;

/** Texts that fit the schema's few patterns, which all ask for a short name. */
const names = ['seat-ring-1', 'pipe2', 'aa1', 'x-9'];
const texts = ['Bay 7', 'Ñandú 🜂 street', 'a', '“Stop.”', '\u0000', '\\"\n'];

/** A document made up from the published schema alone: every choice of it is taken sooner or later. */
export function generated(chance: Chance): unknown {
  return valueOf(schema, chance, '');
}

function valueOf(node: Node, chance: Chance, name: string): unknown {
  if ('const' in node) return node.const;
  if (node.enum !== undefined) return chance.pick(node.enum);
  const choices = node.anyOf ?? node.oneOf;
  if (choices !== undefined) return valueOf(chance.pick(choices), chance, name);
  switch (node.type) {
    case 'object':
      return objectOf(node, chance);
    case 'array':
      return arrayOf(node, chance, name);
    case 'string':
      return textOf(node, chance);
    case 'number':
    case 'integer':
      return numberOf(node, chance);
    case 'boolean':
      return chance.now(0.5);
    case 'null':
      return null;
    default:
      throw new Error(`The schema has a node of a kind this test does not know: ${JSON.stringify(node)}.`);
  }
}

function objectOf({ properties = {}, required = [] }: Node, chance: Chance): unknown {
  const entries = Object.entries(properties)
    .filter(([key]) => required.includes(key) || chance.now(0.4))
    .map(([key, inner]) => [key, valueOf(inner, chance, key)] as const);
  return Object.fromEntries(entries);
}

function arrayOf(
  { items, prefixItems, minItems = 0, maxItems = 4 }: Node,
  chance: Chance,
  name: string,
): unknown {
  if (prefixItems !== undefined) return prefixItems.map((inner) => valueOf(inner, chance, name));
  if (items === undefined || items === false) return [];
  const count = Math.min(maxItems, minItems + Math.floor(chance.between(0, 4)));
  return Array.from({ length: count }, () => valueOf(items, chance, name));
}

function textOf({ pattern, maxLength = 30 }: Node, chance: Chance): string {
  if (pattern !== undefined) return chance.pick(names);
  const text = chance.pick(texts);
  return chance.now(0.1) ? '🜂'.repeat(maxLength) : text;
}

function numberOf({ type, minimum = -1e9, maximum = 1e9 }: Node, chance: Chance): number {
  const inside = chance.now(0.2) ? chance.pick([minimum, maximum]) : chance.between(minimum, maximum);
  return (type === 'integer' ? Math.floor(inside) : inside) + 0;
}
