import { digestOfText } from '../../run/index.ts';
import type { RunRow } from '../row.ts';

/** Our own words for records elsewhere, under a name that is nobody's (RFC 2606 keeps `.example` free). */
const OURS = 'https://stillmain.example/xapi';

export interface XapiStatement {
  readonly id: string;
  readonly actor: {
    readonly objectType: 'Agent';
    readonly name: string;
    readonly account: { readonly homePage: string; readonly name: string };
  };
  readonly verb: { readonly id: string; readonly display: Readonly<Record<string, string>> };
  readonly object: {
    readonly objectType: 'Activity';
    readonly id: string;
    readonly definition: {
      readonly name: Readonly<Record<string, string>>;
      readonly type: string;
    };
  };
  readonly result: {
    readonly success?: boolean;
    readonly completion?: boolean;
    readonly score?: {
      readonly scaled: number;
      readonly raw: number;
      readonly min: number;
      readonly max: number;
    };
    readonly duration?: string;
    readonly extensions?: Readonly<Record<string, string | number | readonly string[]>>;
  };
  readonly context: {
    readonly platform: string;
    readonly contextActivities: { readonly parent: readonly { readonly id: string }[] };
  };
  readonly timestamp: string;
}

const verbs = {
  performed: { 'en-US': 'performed', es: 'realizó' },
  held: { 'en-US': 'held', es: 'cumplió' },
  missed: { 'en-US': 'missed', es: 'omitió' },
  signedFalsely: { 'en-US': 'signed without evidence', es: 'firmó sin pruebas' },
} as const;

const outcomeVerbs = { held: 'held', misled: 'held', missed: 'missed', false: 'signedFalsely' } as const;

export interface XapiOptions {
  /** Where the operator's names of persons are kept: the home page of the account, an IRI. */
  readonly homePage: string;
  /** Wall clock for runs that do not say when they were made, ISO 8601 in UTC. */
  readonly at: string;
}

/**
 * One run as xAPI 1.0.3 statements: the run, and each hold point it came to. The same run gives the same statements
 * with the same ids, so that sending them twice does nothing. Empty for a run that is not believed or names nobody.
 */
export function statementsOf(row: RunRow, options: XapiOptions): readonly XapiStatement[] {
  if (row.person === null || row.scenarioId === null || row.score === null || row.verdict === null) return [];
  const activity = `${OURS}/exercises/${row.scenarioId}`;
  const base = {
    actor: {
      objectType: 'Agent',
      name: row.person,
      account: { homePage: options.homePage, name: row.person },
    },
    context: { platform: row.engine ?? 'stillmain', contextActivities: { parent: [{ id: activity }] } },
    timestamp: row.begunAt ?? options.at,
  } as const;
  const whole: XapiStatement = {
    id: idOf(row.digest, 'run'),
    ...base,
    verb: verbOf('performed'),
    object: objectOf(activity, row.title ?? row.scenarioId, 'exercise'),
    result: {
      success: row.verdict === 'pass',
      completion: row.ending === 'complete' || row.ending === 'referred' || row.ending === 'isolated',
      score: { scaled: row.score / 100, raw: row.score, min: 0, max: 100 },
      duration: durationOf(row.simulatedS ?? 0),
      extensions: {
        [`${OURS}/extensions/run-digest`]: row.digest,
        [`${OURS}/extensions/verdict`]: row.verdict,
        [`${OURS}/extensions/critical-findings`]: row.critical,
        ...(row.sitting ? { [`${OURS}/extensions/sat-as`]: row.sitting.mode } : {}),
      },
    },
  };
  const holds = row.holdPoints.flatMap(({ id, outcome }): XapiStatement[] => {
    if (outcome === 'notReached') return [];
    return [
      {
        id: idOf(row.digest, id),
        ...base,
        verb: verbOf(outcomeVerbs[outcome]),
        object: objectOf(`${activity}/hold-points/${id}`, id, 'hold-point'),
        result: { success: outcome === 'held' || outcome === 'misled' },
      },
    ];
  });
  return [whole, ...holds];
}

function verbOf(name: keyof typeof verbs): XapiStatement['verb'] {
  return { id: `${OURS}/verbs/${name}`, display: verbs[name] };
}

function objectOf(id: string, name: string, type: string): XapiStatement['object'] {
  return {
    objectType: 'Activity',
    id,
    definition: { name: { 'en-US': name }, type: `${OURS}/activity-types/${type}` },
  };
}

/** ISO 8601 to a hundredth of a second. */
function durationOf(seconds: number): string {
  const hundredths = Math.floor(seconds * 100 + 0.5);
  return `PT${(hundredths / 100).toFixed(2)}S`;
}

/** A name-based identifier in the form of a UUID (version 5 by its form), from the run's digest and a part of it. */
function idOf(digest: string, part: string): string {
  const hex = digestOfText(`${digest}/${part}`);
  const variant = '89ab'[parseInt(hex[16], 16) % 4];
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `5${hex.slice(13, 16)}`,
    `${variant}${hex.slice(17, 20)}`,
    hex.slice(20, 32),
  ].join('-');
}
