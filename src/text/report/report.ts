import type { Assessment, Finding } from '../../core/judge/index.ts';
import type { BadPlace, Decision, Integrity } from '../../core/review/index.ts';
import type { RunRecord } from '../../core/run/index.ts';
import { spoken } from '../language.ts';
import { say } from '../say.ts';
import { filled } from '../sentence.ts';
import type { UnitSystem } from '../units.ts';
import { actionsPart, criticalPart, findingsPart, notesPart } from './appendix.ts';
import { decisionPart } from './decided.ts';
import { facts, gasPart, holdPart, judgementPart, runPart } from './front.ts';
import { html, type Html } from './html.ts';
import { style } from './style.ts';
import { reportWords } from './words/index.ts';

/** What a report is made of: a run's file judged again, and what was decided on it. */
export interface ReportInput {
  readonly record: RunRecord;
  readonly assessment: Assessment | null;
  readonly integrity: Exclude<Integrity, 'damaged'>;
  readonly firstBad: BadPlace | null;
  /** SHA-256 of the run's file. */
  readonly fileDigest: string;
  readonly decision?: Decision | null;
  /** What checking the decision's counter-signature gave. */
  readonly signature?: 'good' | 'bad' | 'unchecked';
  /** Name of a finding within its run: the review's `keyOf`. */
  readonly keyOf: (finding: Finding) => string;
}

export interface ReportOptions {
  /** Units told first; the others stand beside. US customary where nothing is said. */
  readonly system?: UnitSystem;
  /** Leaves out scores and points. */
  readonly hideMarks?: boolean;
}

/** One run as a page for paper: one sheet and an appendix, in the language of the moment. Needs no other file. */
export function report(input: ReportInput, options: ReportOptions = {}): string {
  const told = reportWords();
  const { workOrder } = input.record.scenario;
  const page = html`<html lang="${spoken()}">
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <title>
        ${told.title}: ${input.record.by?.person ?? told.run.unnamed}, ${input.record.scenario.title}
      </title>
      <style>
        ${{ html: style }}
      </style>
    </head>
    <body>
      <main>
        <header>
          <h1>${told.title}</h1>
          <p>${filled(told.by, { operator: workOrder.operator, order: workOrder.number })}</p>
          <p class="caution">
            <strong>${say('caution.trains')}</strong> ${say('caution.first')} ${say('caution.limits')}
          </p>
        </header>
        <div class="two">
          <section>${runPart(input)}</section>
          <section>${judgementPart(input, options)}</section>
        </div>
        <div class="two">
          <section>${holdPart(input)}</section>
          <section>${criticalPart(input)}${gasPart(input, options)}</section>
        </div>
        <section>${decisionPart(input)}</section>
        <section>${verifyPart(input)}</section>
        <div class="appendix">
          <h1>${told.appendix}</h1>
          <section>${findingsPart(input, options)}</section>
          <section>${notesPart(input)}</section>
          <section>${actionsPart(input, options)}</section>
        </div>
      </main>
    </body>
  </html> `;
  return `<!doctype html>\n${page.html}`;
}

function verifyPart({ fileDigest, record }: ReportInput): Html {
  const { verify } = reportWords();
  return html`<h2>${verify.heading}</h2>
    ${facts([
      [verify.digest, html`<span class="digest">${fileDigest}</span>`],
      [verify.end, html`<span class="digest">${record.endDigest}</span>`],
    ])}
    <p>${filled(verify.first, { command: 'sha256sum run.json' })}</p>
    <p>${filled(verify.then, { command: 'npx --no-install stillmain judge run.json' })}</p>
    <p>${verify.chain}</p>`;
}
