/**
 * The floors of the house: who may import from whom, and which outside parts may be used where.
 * This table has no exceptions beside it; what it does not grant is refused.
 */

/**
 * How much of another floor is granted: everything its index offers; types alone (erased before anything runs);
 * or only the words of the rig: what can be done, what happened, what the job is; never how it comes about.
 */
export type Grant = 'everything' | 'types' | 'words';

export interface Floor {
  readonly from: Readonly<Record<string, Grant>>;
  /** Outside packages, by name or by scope with a trailing slash. */
  readonly parts: readonly string[];
}

/** The files whose exports `words` grants. They hold unions, lists and schemas, no behaviour. */
export const wordFiles = ['src/core/rig/facts.ts', 'src/core/rig/actions.ts', 'src/core/rig/job.ts'];

const everything = (...floors: string[]): Record<string, Grant> =>
  Object.fromEntries(floors.map((floor) => [floor, 'everything']));
const types = (...floors: string[]): Record<string, Grant> =>
  Object.fromEntries(floors.map((floor) => [floor, 'types']));

const schema = ['valibot'];
const hashing = ['@noble/hashes', 'canonicalize'];
const screenParts = ['svelte', '@lucide/svelte', '@fontsource-variable/inter'];

const coreFloors: Record<string, Floor> = {
  'core/units': { from: {}, parts: [...schema, '@stdlib/'] },
  'core/catalogue': { from: everything('core/units'), parts: schema },
  'core/physics': { from: everything('core/units', 'core/catalogue'), parts: schema },
  'core/rig': { from: everything('core/units', 'core/catalogue', 'core/physics'), parts: schema },
  // Physics: what a fault costs is worked out by the laws the run itself follows.
  'core/faults': {
    from: everything('core/units', 'core/catalogue', 'core/physics', 'core/rig'),
    parts: schema,
  },
  'core/procedure': {
    from: { ...everything('core/units'), 'core/rig': 'words' },
    parts: [...schema, 'xstate'],
  },
  'core/scenario': {
    from: everything('core/units', 'core/catalogue', 'core/rig', 'core/faults', 'core/procedure'),
    parts: [...schema, '@valibot/to-json-schema', ...hashing],
  },
  'core/run': {
    from: everything(
      'core/units',
      'core/catalogue',
      'core/physics',
      'core/rig',
      'core/faults',
      'core/procedure',
      'core/scenario',
    ),
    parts: [...schema, '@valibot/to-json-schema', ...hashing],
  },
  'core/judge': {
    from: {
      // Faults: what each endangers and what answers it is said once, beside what it does.
      ...everything('core/units', 'core/faults', 'core/procedure', 'core/scenario', 'core/run'),
      'core/rig': 'words',
    },
    parts: [...schema, ...hashing],
  },
  // Units is the ground under every floor: a hand counts in psi and turns like everybody else.
  'core/hands': {
    from: everything('core/units', 'core/procedure', 'core/scenario', 'core/run', 'core/rig'),
    parts: schema,
  },
};
// What an assessor does with judged runs. simple-statistics: means, variances and the line through attempts.
coreFloors['core/review'] = {
  from: { ...everything('core/units', 'core/scenario', 'core/run', 'core/judge'), 'core/rig': 'words' },
  parts: [...schema, '@valibot/to-json-schema', ...hashing, 'simple-statistics'],
};
coreFloors['core/prove'] = { from: everything(...Object.keys(coreFloors)), parts: [...schema, ...hashing] };

const coreNames = Object.keys(coreFloors);
const wholeCore = everything(...coreNames);
const coreTypes = { ...types(...coreNames), ...everything('core/units') };

const seen = { ...wholeCore, ...everything('text', 'session', 'store', 'scene', 'sound', 'panel') };
const workplace: Floor = { from: seen, parts: screenParts };

export const floors: Readonly<Record<string, Floor>> = {
  ...coreFloors,
  // Outside the core, units are granted as values: whoever words or draws a reading converts it.
  text: { from: coreTypes, parts: [] },
  session: { from: { ...wholeCore, ...everything('text') }, parts: ['xstate', ...schema] },
  // @noble/ed25519: signatures where the browser has none; loaded only there.
  store: {
    from: { ...wholeCore, ...everything('text') },
    parts: ['idb', '@noble/ed25519', ...schema, ...hashing],
  },
  scene: {
    from: {
      ...everything('core/units', 'core/catalogue', 'text'),
      ...types('core/rig', 'core/run'),
    },
    parts: ['three', 'camera-controls'],
  },
  sound: { from: { ...everything('core/units', 'text'), ...types('core/run') }, parts: [] },
  panel: {
    from: { ...coreTypes, ...everything('text', 'session', 'scene') },
    parts: [...screenParts, 'uplot'],
  },
  practice: workplace,
  bench: workplace,
  desk: { from: seen, parts: [...screenParts, 'uplot'] },
  // odex: an independent solver that `bench` prints beside ours; nothing is computed by it.
  cli: { from: { ...wholeCore, ...everything('text') }, parts: ['commander', 'node:', 'odex'] },
  main: {
    from: everything('text', 'session', 'store', 'panel', 'practice', 'bench', 'desk'),
    parts: screenParts,
  },
  setup: { from: {}, parts: ['node:'] },
};

/** Data that lies outside `src` and may be imported by the floors named. */
export const dataOutside: readonly { readonly under: string; readonly by: readonly string[] }[] = [
  { under: 'scenarios/', by: ['main', 'practice', 'bench', 'desk', 'store', 'cli'] },
  { under: 'package.json', by: ['main', 'cli'] },
  // What the published checks left: the page about the model is built from it.
  { under: 'dist/shown/', by: ['practice'] },
];

/** @returns the floor a source file stands on, or nothing when the table knows no such floor */
export function readFloor(path: string): string | undefined {
  const parts = path.split('/');
  if (parts[0] !== 'src') return undefined;
  if (parts.length === 2) return parts[1] === 'cli.ts' ? 'cli' : 'main';
  const name = parts[1] === 'core' ? (parts.length > 3 ? `core/${parts[2]}` : undefined) : parts[1];
  return name !== undefined && Object.hasOwn(floors, name) ? name : undefined;
}
