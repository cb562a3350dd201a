import type { Action, Fact, Hindrance, HoldPointId, Job, KitEntry } from '../core/rig/index.ts';
import type { StageId } from '../core/procedure/index.ts';
import type { Finding } from '../core/judge/index.ts';
import type { HoldPointWords, Speech, StageWords } from './catalogue.ts';
import { english } from './messages/en/index.ts';
import { capital } from './sentence.ts';
import { unitsOf, type UnitSystem } from './units.ts';

/** A finding in words. */
export interface FindingText {
  readonly title: string;
  readonly happened: string;
  readonly why: string;
  readonly next: string;
}

/** Everything that can be said about one job, in one system of units. */
export interface Voice {
  readonly speech: Speech;
  /** `Seat ring 1`: a piece's name and stamp, for a card or a list. */
  readonly piece: (id: string) => string;
  /** What the piece is for. */
  readonly pieceIsFor: (id: string) => string;
  readonly button: (action: Action) => string;
  readonly done: (action: Action) => string;
  readonly fact: (fact: Fact) => string;
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
      const entry = job.kit.find((k) => k.id === id);
      return entry ? english.pieces[entry.kind].what : '';
    },
    button: (action) => wordAction(action, 'button', speech),
    done: (action) => wordAction(action, 'done', speech),
    fact: (fact) => wordFact(fact, speech),
    hindrance: (hindrance) => english.hindrances[hindrance],
    stage: (id) => english.stages[id],
    holdPoint: (id) => english.holdPoints[id],
    evidenceItem: (id, item) => english.evidenceItems[id][item] ?? item,
    finding: (finding) => wordFinding(finding, speech),
  };
}

/** How the pieces of a job's kit are called. */
export function speechOf(job: Job, system: UnitSystem): Speech {
  const names = new Map(job.kit.map((entry) => [entry.id, nameOf(entry, job.kit)]));
  const piece = (id: string) => names.get(id) ?? id;
  return { units: unitsOf(system), piece, thePiece: (id) => `the ${piece(id)}` };
}

/** Name and stamp; pieces that are alike in both are told apart by a number. */
function nameOf(entry: KitEntry, kit: readonly KitEntry[]): string {
  const alike = kit.filter((k) => k.kind === entry.kind && k.stamped === entry.stamped);
  const stamp = entry.stamped === undefined ? '' : ` ${entry.stamped}`;
  const number = alike.length > 1 ? ` no. ${alike.indexOf(entry) + 1}` : '';
  return `${english.pieces[entry.kind].name}${stamp}${number}`;
}

function wordAction(action: Action, form: 'button' | 'done', speech: Speech): string {
  const word = english.actions[action.kind][form] as (action: Action, speech: Speech) => string;
  return word(action, speech);
}

function wordFact(fact: Fact, speech: Speech): string {
  const word = english.facts[fact.fact] as (fact: Fact, speech: Speech) => string;
  return word(fact, speech);
}

function wordFinding(finding: Finding, speech: Speech): FindingText {
  const words = english.findings[finding.id];
  return { title: words.title, happened: words.happened(finding, speech), why: words.why, next: words.next };
}
