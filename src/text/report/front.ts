import type { Heading } from '../../core/scenario/index.ts';
import { filled } from '../sentence.ts';
import { reviewWords, sayPlace, saySaidOtherwise } from '../review/index.ts';
import { clock, finePercent, unitsOf, type UnitSystem } from '../units.ts';
import { decimals } from '../figures.ts';
import { words } from '../words.ts';
import { html, type Html } from './html.ts';
import type { ReportInput, ReportOptions } from './report.ts';
import { reportWords } from './words/index.ts';

export type Row = readonly [label: string, value: string | Html];

/** A table of labels and values. */
export function facts(rows: readonly Row[]): Html {
  return html`<table class="facts">
    ${rows.map(
      ([label, value]) =>
        html`<tr>
          <th scope="row">${label}</th>
          <td>${value}</td>
        </tr>`,
    )}
  </table>`;
}

/** A quantity in both systems of units, the one asked for first. */
export function inBoth(system: UnitSystem, write: (system: UnitSystem) => string): string {
  const [first, second] = [write(system), write(system === 'us' ? 'si' : 'us')];
  return first === second ? first : `${first} (${second})`;
}

/** Which run it was and how far its file is believed. */
export function runPart({ record, integrity, firstBad, assessment }: ReportInput): Html {
  const { run } = reportWords();
  const standing = reviewWords().integrity[integrity];
  const { by, said } = record;
  const rows: Row[] = [
    [run.person, by?.person ?? run.unnamed],
    [run.exercise, `${record.scenario.title} (${record.scenario.id})`],
    ...(by ? [[run.attempt, String(by.attempt)] as const] : []),
    [run.performed, by?.begunAt?.replace('T', ' ').replace(/(\.\d+)?Z$/, ' UTC') ?? run.undated],
    [run.sat, satAs(record.sitting)],
    [run.took, `${clock(record.endS)} · ${run.actions}: ${record.entries.length}`],
    [run.engine, record.engine],
    [
      run.standing,
      html`<span class="strong">${standing.word}</span>. ${standing.means} ${firstBad && sayPlace(firstBad)}`,
    ],
  ];
  const saying = said
    ? filled(run.said, { verdict: words().verdicts[said.verdict], score: decimals(said.score, 1) })
    : run.saidNothing;
  const otherwise = integrity === 'same' && assessment !== null ? saySaidOtherwise(record, assessment) : null;
  return html`<h2>${run.heading}</h2>
    ${facts(rows)} ${integrity === 'altered' && html`<p class="strong">${run.altered}</p>`}
    ${integrity === 'differs' && html`<p>${saying}</p>`}
    ${otherwise && html`<p class="strong">${otherwise}</p>`}`;
}

/** How a run was sat, as its file says. */
function satAs(sitting: ReportInput['record']['sitting']): string {
  const { run } = reportWords();
  if (sitting === undefined) return run.undated;
  const { mode, asked } = sitting;
  return asked === 0 ? run[mode] : `${run[mode]}, ${filled(run.asked, { n: asked })}`;
}

/** The machine's judgement and, where there is a decision, the assessor's beside it. */
export function judgementPart(
  { assessment, decision, record }: ReportInput,
  { hideMarks }: ReportOptions,
): Html {
  const { judgement } = reportWords();
  if (assessment === null)
    return html`<h2>${judgement.heading}</h2>
      <p>${judgement.none}</p>`;
  const { verdicts, endings, headings } = words();
  const weighed = decision?.weighed ?? null;
  const beside = (cell: string): Html | null => weighed && html`<td>${cell}</td>`;
  const score = (value: number): string => decimals(value, 1);
  const cut = filled(judgement.cut, { cut: decimals(record.scenario.cutScore, 0) });
  const marks = html`<tr>
      <th scope="row">${judgement.score} (${cut})</th>
      <td>${score(assessment.score)}</td>
      ${beside(weighed ? score(weighed.score) : '')}
    </tr>
    ${(Object.keys(assessment.headings) as Heading[]).map((id) => {
      const { got, of } = assessment.headings[id];
      const told = filled(judgement.got, { got: score(got), of: decimals(of, 0) });
      return html`<tr>
        <th scope="row">${headings[id]}</th>
        <td>${told}</td>
        ${beside('')}
      </tr>`;
    })}`;
  return html`<h2>${judgement.heading}</h2>
    <table>
      <tr>
        <th></th>
        <th scope="col">${judgement.machine}</th>
        ${weighed && html`<th scope="col">${judgement.assessor}</th>`}
      </tr>
      <tr>
        <th scope="row">${judgement.verdict}</th>
        <td class="strong">${verdicts[assessment.verdict]}</td>
        ${weighed && html`<td class="strong">${verdicts[weighed.verdict]}</td>`}
      </tr>
      <tr>
        <th scope="row">${judgement.ending}</th>
        <td>${endings[assessment.ending].title}</td>
        ${beside('')}
      </tr>
      <tr>
        <th scope="row">${judgement.intended}</th>
        <td>${endings[assessment.intendedEnding].title}</td>
        ${beside('')}
      </tr>
      ${!hideMarks && marks}
    </table>
    ${hideMarks && html`<p>${judgement.hidden}</p>`}`;
}

/** Each hold point with how it came out. */
export function holdPart({ assessment }: ReportInput): Html | null {
  if (assessment === null) return null;
  const { holds } = reportWords();
  const { holdPoints, outcomes } = words();
  return html`<h2>${holds.heading}</h2>
    <table>
      <tr>
        <th scope="col">${holds.id}</th>
        <th scope="col">${holds.what}</th>
        <th scope="col">${holds.outcome}</th>
        <th scope="col" class="figure">${holds.at}</th>
      </tr>
      ${assessment.holdPoints.map(
        ({ id, outcome, atS }) =>
          html`<tr>
            <td>${id}</td>
            <td>${holdPoints[id].title}</td>
            <td>
              ${
                outcome === 'held'
                  ? outcomes[outcome].word
                  : html`<span class="mark">${outcomes[outcome].word}</span>`
              }
            </td>
            <td class="figure">${atS === null ? '' : clock(atS)}</td>
          </tr>`,
      )}
    </table>`;
}

/** Gas that got away, in both systems of units. */
export function gasPart({ assessment }: ReportInput, { system = 'us' }: ReportOptions): Html | null {
  if (assessment === null) return null;
  const { gas } = reportWords();
  const mass = (kg: number): string => inBoth(system, (one) => unitsOf(one).mass(kg));
  return html`<h2>${gas.heading}</h2>
    ${facts([
      [gas.toHole, mass(assessment.ledger.toExcavationKg)],
      [gas.bled, mass(assessment.ledger.throughBleedKg)],
      [gas.peak, `${finePercent(assessment.peakLelFraction)} LEL (${gas.peakNote})`],
    ])}`;
}
