import type { Assessment } from '../core/judge/index.ts';
import type { LawCheck } from '../core/physics/index.ts';
import type { Scenario } from '../core/scenario/index.ts';
import { clock, english, say, unitsOf, voiceOf } from '../text/index.ts';
import type { JudgedFile } from './judgeFile.ts';

/** An assessment as lines for a person. */
export function wordAssessment(scenario: Scenario, result: Assessment): string {
  const voice = voiceOf(scenario.job);
  const { mass } = unitsOf('us');
  const { ledger } = result;
  const lines = [
    `${english.verdicts[result.verdict]}. ${english.endings[result.ending].title}. ${say('scenario.pass', {
      title: scenario.title,
      score: result.score.toFixed(1),
      cut: scenario.cutScore,
    })}`,
    ...Object.entries(result.headings).map(
      ([id, { got, of }]) =>
        `  ${english.headings[id as keyof typeof english.headings]}: ${got.toFixed(1)} of ${of}`,
    ),
    `  ${result.holdPoints.map(({ id, outcome }) => `${id} ${english.outcomes[outcome].word}`).join(', ')}`,
    `  ${say('twin.intoHole', { mass: mass(ledger.toExcavationKg), bled: mass(ledger.throughBleedKg) })}`,
    ...result.findings.map((finding) => {
      const { title, happened } = voice.finding(finding);
      return `  ${clock(finding.atS)} ${title}: ${happened}`;
    }),
    `  ${result.actions} actions, ${clock(result.simulatedS)} of simulated time, digest ${result.digest.slice(0, 16)}…`,
    say('caution.trains'),
  ];
  return lines.join('\n');
}

/** One judged file as one line. */
export function wordFile(judged: JudgedFile): string {
  const standing =
    judged.integrity === 'altered' ? `altered from action ${(judged.firstBad ?? 0) + 1}` : judged.integrity;
  if (!('verdict' in judged)) return `${judged.file}: ${standing}. ${judged.says}`;
  const { file, verdict, score, ending, findings } = judged;
  const critical = findings.filter((finding) => finding.critical).length;
  return `${file}: ${standing}, ${verdict}, ${score.toFixed(1)}, ${ending}, ${findings.length} findings (${critical} critical)`;
}

/** One law check as one line. */
export function wordLaw({ case_id, ours, theirs, relative, note }: LawCheck): string {
  const numbers =
    ours === null || relative === null
      ? 'not claimed'
      : `${ours} against ${theirs}, ${(relative * 100).toFixed(4)} %`;
  return `${case_id}: ${numbers}${note === undefined ? '' : ` (${note})`}`;
}
