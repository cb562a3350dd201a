import type { NoticedExercise } from './noticeFile.ts';

/** Least share of the slips that matter which must be noticed under the right heading. */
const NOTICED_LEAST = 0.98;

type Tally = Pick<NoticedExercise, 'tried' | 'mattering' | 'noticed' | 'harmless' | 'punished' | 'unruled'>;

/** Enough noticed over all the exercises together, and nothing punished that does no harm. */
export function isNoticedWell(exercises: readonly NoticedExercise[]): boolean {
  const all = sum(exercises);
  return all.punished === 0 && all.noticed >= NOTICED_LEAST * all.mattering;
}

/** A table of exercises, their sum, and every slip that was judged otherwise than its rule says. */
export function wordNoticing(exercises: readonly NoticedExercise[]): string {
  const width = Math.max(...exercises.map(({ id }) => id.length), 'together'.length);
  const row = (id: string, cells: readonly string[]): string =>
    [id.padEnd(width), ...cells.map((cell) => cell.padStart(9))].join(' ');
  const told = (id: string, one: Tally): string => row(id, cellsOf(one));
  return [
    row('', ['tried', 'matter', 'noticed', 'share', 'harmless', 'punished', 'no rule']),
    ...exercises.map((one) => told(one.id, one)),
    told('together', sum(exercises)),
    ...exercises.flatMap(({ id, misses }) =>
      misses.map(({ key, way, toward, at, expected, lost, verdict }) => {
        const wanted =
          'harmless' in expected
            ? `harmless, ${expected.harmless}`
            : `${expected.critical === true ? 'critical' : `from ${expected.least}`} under ${expected.headings.join(' or ')}, ${expected.why}`;
        return `${id}: ${key}, ${way}, entry ${at} towards ${toward ?? 'the end'}: should be ${wanted}; lost ${lost.toFixed(2)}, ${verdict}`;
      }),
    ),
  ].join('\n');
}

function cellsOf({ tried, mattering, noticed, harmless, punished, unruled }: Tally): readonly string[] {
  const share = mattering === 0 ? '–' : (noticed / mattering).toFixed(3);
  return [tried, mattering, noticed, share, harmless, punished, unruled].map(String);
}

function sum(exercises: readonly NoticedExercise[]): Tally {
  const none: Tally = { tried: 0, mattering: 0, noticed: 0, harmless: 0, punished: 0, unruled: 0 };
  return exercises.reduce(
    (all, one) => ({
      tried: all.tried + one.tried,
      mattering: all.mattering + one.mattering,
      noticed: all.noticed + one.noticed,
      harmless: all.harmless + one.harmless,
      punished: all.punished + one.punished,
      unruled: all.unruled + one.unruled,
    }),
    none,
  );
}
