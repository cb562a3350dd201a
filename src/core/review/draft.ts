import { abnormalConditionIds, type AbnormalConditionId, type Assessment } from '../judge/index.ts';
import { yearsAfter } from './days.ts';
import type { DecisionBody, DecisionWord } from './decision.ts';
import { noOpinion, weigh, type Opinion } from './opinion.ts';
import type { Reassessed } from './reassess.ts';
import { rowOf } from './row.ts';

/** How long a decision is kept after it stops counting, years: 49 CFR 192.807(b), five for prior qualifications. */
export const RETENTION_YEARS = 5;

export interface DecisionInput {
  readonly reassessed: Reassessed;
  readonly assessor: { readonly name: string; readonly role: string };
  readonly decision: DecisionWord;
  readonly individual: string;
  readonly coveredTask: string;
  /** Wall clock, ISO 8601 in UTC. */
  readonly decidedAt: string;
  readonly validity?: DecisionBody['validity'];
  readonly abnormal?: DecisionBody['abnormal'];
  readonly opinion?: Opinion;
  readonly notes?: DecisionBody['notes'];
  readonly replaces?: { readonly digest: string; readonly why: string };
  readonly retentionYears?: number;
}

/** A decision ready to be looked over and counter-signed. Pure: the time is given. */
export function draftDecision(input: DecisionInput): DecisionBody {
  const { reassessed, assessor, decision, decidedAt, individual, coveredTask } = input;
  const { record, assessment, integrity, fileDigest } = reassessed;
  const row = rowOf('', reassessed);
  const opinion = input.opinion ?? noOpinion;
  const judged = integrity === 'same' ? assessment : null;
  const weighed = judged && record ? weigh(judged, opinion, record.scenario.cutScore).assessor : null;
  const on = decidedAt.slice(0, 10);
  const validity = input.validity ?? null;
  const counts = validity !== null && validity.until > on ? validity.until : on;
  return {
    format: 'stillmain-decision',
    version: 1,
    run: {
      digest: fileDigest,
      scenarioId: row.scenarioId,
      title: row.title,
      engine: row.engine,
      attempt: row.attempt,
      performedAt: row.begunAt,
    },
    machine: { integrity, verdict: row.verdict, score: row.score, critical: [...row.critical] },
    assessor: { ...assessor },
    decision,
    qualification: { individual, coveredTask, on, method: 'simulation' },
    validity,
    abnormal: input.abnormal ?? (judged ? abnormalOf(judged) : []),
    opinion: {
      setAside: opinion.setAside.map((one) => ({ ...one })),
      added: opinion.added.map((one) => ({ ...one })),
    },
    weighed: weighed && { verdict: weighed.verdict, score: weighed.score },
    notes: input.notes ?? [],
    decidedAt,
    keepUntil: yearsAfter(counts, input.retentionYears ?? RETENTION_YEARS),
    replaces: input.replaces?.digest ?? null,
    replacesWhy: input.replaces?.why ?? null,
  };
}

/** Abnormal conditions that the judgement speaks of: not seen, or seen and not answered. */
function abnormalOf(assessment: Assessment): DecisionBody['abnormal'] {
  const known = (item: string): item is AbnormalConditionId =>
    (abnormalConditionIds as readonly string[]).includes(item);
  return assessment.findings.flatMap((finding) => {
    if (finding.id !== 'abnormalNotNoticed' && finding.id !== 'abnormalWrongReaction') return [];
    const seen = finding.id === 'abnormalWrongReaction';
    return finding.items.filter(known).map((condition) => ({ condition, seen, reacted: false, says: '' }));
  });
}
