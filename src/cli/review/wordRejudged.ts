import { english } from '../../text/index.ts';
import type { Changed, RejudgedMany } from './rejudgeMany.ts';

/** Who changes and why, as lines for a person. */
export function wordRejudged(told: RejudgedMany): string {
  const turned = told.changed.filter(({ change }) => change.verdict[0] !== change.verdict[1]);
  const lines = [
    ...told.changed.map(wordChanged),
    ...told.refused.map(({ file, says }) => `${file}: not judged. ${says}`),
    `${told.files} files: ${turned.length} change their verdict, ${told.changed.length - turned.length} only their marks, ` +
      `${told.unchanged} nothing; ${told.refused.length} not judged.`,
    `${told.perS.toFixed(1)} a second, memory at most ${(told.peakRssBytes / 1048576).toFixed(0)} MiB, ` +
      `${told.fromJournal} taken from the journal.`,
    'Nothing has been kept but the journal; --keep writes the table of the new judgements.',
  ];
  return lines.join('\n');
}

function wordChanged({ file, person, change }: Changed): string {
  const [was, is] = change.verdict.map((verdict) => english.verdicts[verdict]);
  const verdict = was === is ? `${is}, as before` : `${was} → ${is}`;
  const [before, after] = change.score.map((score) => score.toFixed(1));
  const because = [
    ...(change.byCutScore ? ['the least score to pass'] : []),
    ...change.headings.map(
      ({ id, got, of }) =>
        `${english.headings[id]} ${got[0].toFixed(1)} of ${of[0]} → ${got[1].toFixed(1)} of ${of[1]}`,
    ),
    ...change.gone.map(({ id }) => `no longer “${english.findings[id].title}”`),
    ...change.came.map(({ id }) => `now “${english.findings[id].title}”`),
  ];
  return `${file} (${person ?? 'nobody named'}): ${verdict}; ${before} → ${after}. Because of: ${because.join('; ')}.`;
}
