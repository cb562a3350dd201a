import { posix } from 'node:path';
import { dataOutside, type Floor, floors, readFloor } from './floorTable.ts';
import { type ImportSeen, readImports } from './readImports.ts';
import type { SourceText } from './sourceText.ts';

const isStyle = (path: string): boolean => path.endsWith('.css');

function judgePart(floor: Floor, floorName: string, specifier: string): string | undefined {
  const granted = floor.parts.some(
    (part) => specifier === part || specifier.startsWith(/[/:]$/.test(part) ? part : `${part}/`),
  );
  return granted ? undefined : `${floorName} may not use the outside part "${specifier}"`;
}

function judgeOutside(floorName: string, target: string): string | undefined {
  const granted = dataOutside.some((data) => target.startsWith(data.under) && data.by.includes(floorName));
  return granted ? undefined : `${floorName} may not reach outside src for "${target}"`;
}

function judgeGrant(
  floorName: string,
  otherName: string,
  seen: ImportSeen,
  words: ReadonlySet<string>,
): string | undefined {
  const grant = floors[floorName]?.from[otherName];
  if (grant === undefined) return `${floorName} may not import from ${otherName}`;
  if (grant === 'types' && !seen.typeOnly) return `${floorName} may import only types from ${otherName}`;
  if (grant !== 'words') return undefined;
  const strange =
    seen.names === 'all' ? ['everything at once'] : seen.names.filter((name) => !words.has(name));
  if (strange.length === 0) return undefined;
  return `${floorName} may import from ${otherName} only words, not ${strange.join(', ')}`;
}

function judgeRelative(
  path: string,
  floorName: string,
  seen: ImportSeen,
  words: ReadonlySet<string>,
): string | undefined {
  const bare = seen.specifier.split('?', 1)[0] ?? '';
  const target = posix.normalize(posix.join(posix.dirname(path), bare));
  if (!target.startsWith('src/')) return judgeOutside(floorName, target);
  const otherName = readFloor(target);
  if (otherName === undefined) return `"${seen.specifier}" leads to no floor of the house`;
  if (otherName === floorName) return undefined;
  const refused = judgeGrant(floorName, otherName, seen, words);
  if (refused !== undefined) return refused;
  const entered = target === `src/${otherName}/index.ts` || (floorName === 'main' && isStyle(target));
  return entered
    ? undefined
    : `${otherName} is entered through its index.ts, not through "${seen.specifier}"`;
}

/**
 * Holds every import of one file against the table of floors.
 * @param words the words of the rig, see `wordFiles`
 * @returns one sentence a breach, with file and line
 */
export function judgeImports(source: SourceText, words: ReadonlySet<string>): string[] {
  const floorName = readFloor(source.path);
  const floor = floorName === undefined ? undefined : floors[floorName];
  if (floorName === undefined || floor === undefined)
    return [`${source.path}: stands on no floor of the table`];
  return readImports(source).flatMap((seen) => {
    const at = `${source.path}:${seen.line}`;
    if (seen.specifier === '(computed)') return [`${at}: an import must name what it imports`];
    if (seen.specifier.startsWith('/'))
      return [`${at}: "${seen.specifier}" starts at no folder of this repository`];
    const refused = seen.specifier.startsWith('.')
      ? judgeRelative(source.path, floorName, seen, words)
      : judgePart(floor, floorName, seen.specifier);
    return refused === undefined ? [] : [`${at}: ${refused}`];
  });
}
