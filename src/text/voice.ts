import type { Action, Fact, Hindrance, HoldPointId, Job, KitEntry } from '../core/rig/index.ts';
import type { StageId } from '../core/procedure/index.ts';
import type { Finding } from '../core/judge/index.ts';
import type { HoldPointWords, SensedKind, Speech, StageWords } from './catalogue.ts';
import { capital } from './sentence.ts';
import { unitsOf, type UnitSystem } from './units.ts';
import { words } from './words.ts';

/** A finding in words. */
export interface FindingText {
  readonly title: string;
  readonly happened: string;
  readonly why: string;
  readonly next: string;
}

/** Everything that can be said about one job, in one system of units and the language of the moment. */
export interface Voice {
  readonly speech: Speech;
  /** `Seat ring 1`: a piece's name and stamp, for a card or a list. */
  readonly piece: (id: string) => string;
  /** What the piece is for. */
  readonly pieceIsFor: (id: string) => string;
  readonly button: (action: Action) => string;
  readonly done: (action: Action) => string;
  readonly fact: (fact: Fact) => string;
  /** The same as a crew has it: what it saw, felt, heard and read, and nothing of what was true beside it. */
  readonly sensed: (fact: Fact) => string;
  readonly hindrance: (hindrance: Hindrance) => string;
  readonly stage: (id: StageId) => StageWords;
  readonly holdPoint: (id: HoldPointId) => HoldPointWords;
  /** A requirement of a hold point: `the full hold`. */
  readonly evidenceItem: (id: HoldPointId, item: string) => string;
  readonly finding: (finding: Finding) => FindingText;
}

/** The voice for a job. */
export function voiceOf(job: Job, system: UnitSystem = 'us'): Voice {
  const speech = speechOf(job, system);
  return {
    speech,
    piece: (id) => capital(speech.piece(id)),
    pieceIsFor: (id) => {
      const entry = withInside(job.kit).find((k) => k.id === id);
      return entry ? words().pieces[entry.kind].what : '';
    },
    button: (action) => wordAction(action, 'button', speech),
    done: (action) => wordAction(action, 'done', speech),
    fact: (fact) => wordFact(fact, speech),
    sensed: (fact) => wordSensed(fact, speech),
    hindrance: (hindrance) => words().hindrances[hindrance],
    stage: (id) => words().stages[id],
    holdPoint: (id) => words().holdPoints[id],
    evidenceItem: (id, item) => words().evidenceItems[id][item] ?? item,
    finding: (finding) => wordFinding(finding, speech),
  };
}

/** How the pieces of a job's kit are called. */
export function speechOf(job: Job, system: UnitSystem): Speech {
  const { the } = words();
  const named = new Map(
    withInside(job.kit).map((entry) => {
      const name = nameOf(entry, job.kit.includes(entry) ? job.kit : [entry]);
      return [entry.id, { name, the: the(entry.kind, name) }];
    }),
  );
  return {
    units: unitsOf(system),
    piece: (id) => named.get(id)?.name ?? id,
    thePiece: (id) => named.get(id)?.the ?? id,
  };
}

/** The kit with what renewal tees bring inside them, under the names the rig gives it. */
function withInside(kit: readonly KitEntry[]): readonly KitEntry[] {
  return kit.flatMap((entry) => {
    if (entry.kind !== 'renewalTee') return [entry];
    const { id, stamped } = entry;
    const stopper: KitEntry = { id: `${id}-stopper`, kind: 'boreStopper', stamped };
    return [entry, stopper, { id: `${id}-keeper`, kind: 'keeperPlug', stamped }];
  });
}

/** Name and stamp; pieces that are alike in both are told apart by a number. */
function nameOf(entry: KitEntry, kit: readonly KitEntry[]): string {
  const alike = kit.filter((k) => k.kind === entry.kind && k.stamped === entry.stamped);
  const stamp = entry.stamped === undefined ? '' : ` ${entry.stamped}`;
  const number = alike.length > 1 ? ` ${words().numbered(alike.indexOf(entry) + 1)}` : '';
  return `${words().pieces[entry.kind].name}${stamp}${number}`;
}

function wordAction(action: Action, form: 'button' | 'done', speech: Speech): string {
  const word = words().actions[action.kind][form] as (action: Action, speech: Speech) => string;
  return word(action, speech);
}

function wordFact(fact: Fact, speech: Speech): string {
  const word = words().facts[fact.fact] as (fact: Fact, speech: Speech) => string;
  return word(fact, speech);
}

function wordSensed(fact: Fact, speech: Speech): string {
  const { sensed } = words();
  if (!Object.hasOwn(sensed, fact.fact)) return wordFact(fact, speech);
  const word = sensed[fact.fact as SensedKind] as (fact: Fact, speech: Speech) => string;
  return word(fact, speech);
}

function wordFinding(finding: Finding, speech: Speech): FindingText {
  const { title, happened, why, next } = words().findings[finding.id];
  return { title, happened: happened(finding, speech), why, next };
}
