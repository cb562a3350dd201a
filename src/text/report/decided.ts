import { filled } from '../sentence.ts';
import { reviewWords } from '../review/index.ts';
import { words } from '../words.ts';
import { facts, type Row } from './front.ts';
import { html, type Html } from './html.ts';
import type { ReportInput } from './report.ts';
import { reportWords } from './words/index.ts';

/** The decision with the entries a qualification record has, and its counter-signature. */
export function decisionPart({ decision, signature }: ReportInput): Html {
  const { decision: told } = reportWords();
  if (!decision)
    return html`<h2>${told.heading}</h2>
      <p>${told.none}</p>`;
  const { qualification, validity, assessor, replaces, replacesWhy } = decision;
  const rows: Row[] = [
    [told.decided, html`<span class="strong">${reviewWords().decision[decision.decision]}</span>`],
    [told.individual, qualification.individual],
    [told.task, qualification.coveredTask],
    [told.on, qualification.on],
    [told.method, told.simulation],
    [told.validity, validity === null ? told.noValidity : filled(told.days, validity)],
    [told.assessor, filled(told.who, assessor)],
    [told.keep, decision.keepUntil],
  ];
  return html`<h2>${told.heading}</h2>
    ${facts(rows)}
    ${replaces !== null && html`<p>${filled(told.replaces, { digest: replaces.slice(0, 16), why: replacesWhy ?? '' })}</p>`}
    ${abnormalPart(decision.abnormal)}
    <p>${told.basis}</p>
    ${signaturePart(decision.signature, signature ?? 'unchecked')}`;
}

function abnormalPart(abnormal: NonNullable<ReportInput['decision']>['abnormal']): Html {
  const { decision: told } = reportWords();
  const conditions: Readonly<Record<string, string>> = words().conditions;
  if (abnormal.length === 0) return html`<p>${told.abnormal}: ${told.noAbnormal}</p>`;
  const yesNo = (yes: boolean): string => (yes ? told.yes : told.no);
  return html`<table>
    <caption>
      ${told.abnormal}
    </caption>
    <tr>
      <th scope="col">${told.condition}</th>
      <th scope="col">${told.seen}</th>
      <th scope="col">${told.reacted}</th>
      <th scope="col">${told.remark}</th>
    </tr>
    ${abnormal.map(
      ({ condition, seen, reacted, says }) =>
        html`<tr>
          <td>${Object.hasOwn(conditions, condition) ? conditions[condition] : condition}</td>
          <td>${yesNo(seen)}</td>
          <td>${yesNo(reacted)}</td>
          <td>${says}</td>
        </tr>`,
    )}
  </table>`;
}

function signaturePart(
  { publicKey, value }: NonNullable<ReportInput['decision']>['signature'],
  standing: NonNullable<ReportInput['signature']>,
): Html {
  const { signature } = reportWords();
  return html`<h2>${signature.heading}</h2>
    <p class="strong">${signature[standing]}</p>
    ${facts([
      [signature.key, html`<span class="digest">${publicKey}</span>`],
      [signature.value, html`<span class="digest">${value}</span>`],
    ])}
    <p>${signature.proves}</p>`;
}
