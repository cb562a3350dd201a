import { filled } from '../sentence.ts';
import { decimals } from '../figures.ts';
import { clock } from '../units.ts';
import { voiceOf } from '../voice.ts';
import { words } from '../words.ts';
import { inBoth } from './front.ts';
import { html, type Html } from './html.ts';
import type { ReportInput, ReportOptions } from './report.ts';
import { reportWords } from './words/index.ts';

/** The critical findings, one line each. */
export function criticalPart({ assessment, record }: ReportInput): Html | null {
  if (assessment === null) return null;
  const { critical } = reportWords();
  const voice = voiceOf(record.scenario.job);
  const found = assessment.findings.filter((finding) => finding.critical);
  if (found.length === 0)
    return html`<h2>${critical.heading}</h2>
      <p>${critical.none}</p>`;
  return html`<h2>${critical.heading}</h2>
    <ul>
      ${found.map((finding) => html`<li>${clock(finding.atS)} ${finding.holdPoint} ${voice.finding(finding).title}</li>`)}
    </ul>`;
}

/** Every finding in words, those set aside struck through with the reason, and those the assessor added. */
export function findingsPart(input: ReportInput, options: ReportOptions): Html | null {
  const { assessment, decision, record } = input;
  if (assessment === null) return null;
  const told = reportWords().findings;
  const reasons = new Map(decision?.opinion.setAside.map(({ finding, reason }) => [finding, reason]));
  const { system = 'us', hideMarks } = options;
  const [first, second] = [system, system === 'us' ? 'si' : 'us'] as const;
  const voices = { us: voiceOf(record.scenario.job, 'us'), si: voiceOf(record.scenario.job, 'si') };
  const pointsOf = (points: number): string =>
    points === 0 ? told.noPoints : filled(told.points, { points: decimals(points, 2) });
  const machine = assessment.findings.map((finding) => {
    const { title, happened, why, next } = voices[first].finding(finding);
    const other = voices[second].finding(finding).happened;
    const reason = reasons.get(input.keyOf(finding));
    return html`<div class="finding">
      <p class="${reason === undefined ? 'strong' : 'strong aside'}">
        ${clock(finding.atS)} ${finding.holdPoint} ${title}
        ${finding.critical && html`<span class="mark">${told.critical}</span>`}
        ${!hideMarks && html` – ${pointsOf(finding.points)}`}
      </p>
      <p>${happened}${other !== happened && html` <small>(${other})</small>`}</p>
      <p>${why} ${filled(told.next, { next })}</p>
      ${reason !== undefined && html`<p class="strong">${filled(told.setAside, { reason })}</p>`}
    </div>`;
  });
  const added = (decision?.opinion.added ?? []).map(
    ({ atS, says, reason, points, critical, heading, holdPoint }) =>
      html`<div class="finding">
        <p class="strong">
          ${clock(atS)} ${holdPoint} ${says} ${critical && html`<span class="mark">${told.critical}</span>`}
          ${!hideMarks && html` – ${words().headings[heading]}, ${pointsOf(points)}`}
        </p>
        <p>${filled(told.added, { reason })}</p>
      </div>`,
  );
  return html`<h2>${told.heading}</h2>
    ${machine.length + added.length === 0 ? html`<p>${told.none}</p>` : [...machine, ...added]}`;
}

/** Notes of the assessor, at their moments. */
export function notesPart({ decision }: ReportInput): Html | null {
  if (!decision) return null;
  const { notes } = reportWords();
  if (decision.notes.length === 0)
    return html`<h2>${notes.heading}</h2>
      <p>${notes.none}</p>`;
  return html`<h2>${notes.heading}</h2>
    <ul>
      ${decision.notes.map(({ atS, says }) => html`<li>${clock(atS)} ${says}</li>`)}
    </ul>`;
}

/** Every action of the run in words, in both systems of units where they differ. */
export function actionsPart({ record }: ReportInput, { system = 'us' }: ReportOptions): Html {
  const { job } = record.scenario;
  const voices = { us: voiceOf(job, 'us'), si: voiceOf(job, 'si') };
  return html`<h2>${reportWords().actions.heading}</h2>
    <ol class="actions">
      ${record.entries.map(
        ({ atS, action }) =>
          html`<li>${clock(atS)} ${inBoth(system, (one) => voices[one].done(action))}</li>`,
      )}
    </ol>`;
}
