import type { CutDrill, DrillWanted } from '../../core/hands/index.ts';
import type { GoOn, Noticing, Proof } from '../../core/prove/index.ts';
import type { Scenario } from '../../core/scenario/index.ts';

/** What the bench has its workers do, away from the page. */
export type Order =
  /** `whole`: look for dead ends too; else the hands and the faults alone. */
  | { readonly kind: 'prove'; readonly scenario: Scenario; readonly whole: boolean }
  | { readonly kind: 'notice'; readonly scenario: Scenario }
  | { readonly kind: 'cut'; readonly scenario: Scenario; readonly wanted: DrillWanted };

export type Part = Parameters<GoOn>[0];

export type Told =
  | { readonly kind: 'progress'; readonly part: Part; readonly share: number }
  | { readonly kind: 'proved'; readonly proof: Proof }
  | { readonly kind: 'noticed'; readonly noticing: Noticing | null }
  | { readonly kind: 'cut'; readonly cut: CutDrill };
