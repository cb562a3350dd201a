import { describe, expect, it } from 'vitest';
import { floors } from './floorTable.ts';
import { judgeCore } from './judgeCore.ts';
import { judgeImports } from './judgeImports.ts';
import { judgeTidiness, mostLines } from './judgeTidiness.ts';
import { readExportedNames } from './readImports.ts';
import { parseSource } from './sourceText.ts';

const rigWords = new Set(['Fact', 'isFact']);
const imports = (path: string, text: string): string[] => judgeImports(parseSource(path, text), rigWords);
const core = (text: string): string[] => judgeCore(parseSource('src/core/run/advance.ts', text));
const tidy = (path: string, text: string): string[] => judgeTidiness(parseSource(path, text));

describe('an import that its floor does not grant is refused', () => {
  const refused: [string, string, string][] = [
    ['physics asking the rig', 'src/core/physics/solver.ts', "import { attempt } from '../rig/index.ts';"],
    [
      'physics asking for a type of the rig',
      'src/core/physics/solver.ts',
      "import type { Rig } from '../rig/index.ts';",
    ],
    ['the same, written inline', 'src/core/physics/solver.ts', "let rig: import('../rig/index.ts').Rig;"],
    ['a re-export from above', 'src/core/units/index.ts', "export { gases } from '../catalogue/index.ts';"],
    ['a whole re-export from above', 'src/core/units/index.ts', "export * from '../catalogue/index.ts';"],
    [
      'a folder entered through the back',
      'src/core/rig/attempt.ts',
      "import { solve } from '../physics/solver.ts';",
    ],
    [
      'a folder entered without its index named',
      'src/core/rig/attempt.ts',
      "import { solve } from '../physics';",
    ],
    [
      'a hand that knows the physics',
      'src/core/hands/steady.ts',
      "import { solve } from '../physics/index.ts';",
    ],
    [
      'a judge that asks the physics',
      'src/core/judge/judge.ts',
      "import { solve } from '../physics/index.ts';",
    ],
    [
      'a judge that reaches past the words of the rig',
      'src/core/judge/judge.ts',
      "import { attempt } from '../rig/index.ts';",
    ],
    [
      'a judge that takes the whole rig',
      'src/core/judge/judge.ts',
      "import * as rig from '../rig/index.ts';",
    ],
    [
      'a picture that advances the run',
      'src/scene/draw.ts',
      "import { advance } from '../core/run/index.ts';",
    ],
    [
      'a picture that mixes a value among types',
      'src/scene/draw.ts',
      "import { type Run, advance } from '../core/run/index.ts';",
    ],
    ['a sound that knows the rig', 'src/sound/hiss.ts', "import type { Rig } from '../core/rig/index.ts';"],
    ['sentences that run the judge', 'src/text/words.ts', "import { judge } from '../core/judge/index.ts';"],
    [
      'a workplace that imports another',
      'src/practice/index.ts',
      "import { openBench } from '../bench/index.ts';",
    ],
    ['the same, loaded later', 'src/practice/index.ts', "const bench = () => import('../bench/index.ts');"],
    [
      'the same, as a worker',
      'src/practice/index.ts',
      "new Worker(new URL('../bench/work.ts', import.meta.url));",
    ],
    ['the same, by a glob', 'src/practice/index.ts', "import.meta.glob(['../bench/*.ts']);"],
    ['the command line opening a page', 'src/cli.ts', "import { openPage } from './practice/index.ts';"],
    [
      'an address known only at run time',
      'src/practice/index.ts',
      'const open = (name: string) => import(name);',
    ],
    [
      'a test reached from the source',
      'src/practice/index.ts',
      "import { plant } from '../../tests/plant.ts';",
    ],
    ['three outside the scene', 'src/panel/gauge.ts', "import { Scene } from 'three';"],
    ['Svelte inside the scene', 'src/scene/draw.ts', "import { mount } from 'svelte';"],
    ['a state machine inside the rig', 'src/core/rig/attempt.ts', "import { setup } from 'xstate';"],
    ['a file system inside the core', 'src/core/run/record.ts', "import { readFileSync } from 'node:fs';"],
    ['a package whose name only begins alike', 'src/core/run/record.ts', "import x from 'valibot-extra';"],
    ['a folder nobody planned', 'src/common/index.ts', 'export const a = 1;'],
    ['a core folder nobody planned', 'src/core/helpers/index.ts', 'export const a = 1;'],
  ];
  it.each(refused)('%s', (_title, path, text) => {
    expect(imports(path, text)).toHaveLength(1);
  });

  it('in a component too, in its script and in its markup, at the right line', () => {
    const script =
      '<p>gauge</p>\n<script lang="ts">\n  import { openBench } from \'../bench/index.ts\';\n</script>';
    expect(imports('src/practice/Work.svelte', script)).toEqual([
      'src/practice/Work.svelte:3: practice may not import from bench',
    ]);
    const markup = "{#await import('../bench/index.ts') then bench}{bench.name}{/await}";
    expect(imports('src/practice/Work.svelte', markup)).toHaveLength(1);
  });
});

describe('an import that its floor grants is let through', () => {
  const granted: [string, string, string][] = [
    ['the rig asking the physics', 'src/core/rig/attempt.ts', "import { solve } from '../physics/index.ts';"],
    [
      'a neighbour in the same folder',
      'src/core/rig/pieces/tee.ts',
      "import { attempt } from '../attempt.ts';",
    ],
    [
      'the judge reading a fact',
      'src/core/judge/judge.ts',
      "import { type Fact, isFact } from '../rig/index.ts';",
    ],
    [
      'the picture reading types of the run',
      'src/scene/draw.ts',
      "import type { Run } from '../core/run/index.ts';",
    ],
    [
      'the picture reading each name as a type',
      'src/scene/draw.ts',
      "import { type Run } from '../core/run/index.ts';",
    ],
    [
      'the picture reading catalogue values',
      'src/scene/draw.ts',
      "import { sizes } from '../core/catalogue/index.ts';",
    ],
    [
      'a workplace joining what is above',
      'src/practice/index.ts',
      "import { openStore } from '../store/index.ts';",
    ],
    [
      'a scenario loaded as data',
      'src/practice/index.ts',
      "import.meta.glob('../../scenarios/*/scenario.json');",
    ],
    ['a scoped package', 'src/core/units/maths.ts', "import pow from '@stdlib/math-base-special-pow';"],
    [
      'a package by its inner path',
      'src/core/run/digest.ts',
      "import { sha256 } from '@noble/hashes/sha2.js';",
    ],
  ];
  it.each(granted)('%s', (_title, path, text) => {
    expect(imports(path, text)).toEqual([]);
  });

  it('and the words of the rig are the names its word files export themselves', () => {
    const text =
      "import type { Place } from './state.ts';\nexport type { Rig } from './state.ts';\nexport * from './other.ts';\n" +
      'export type Fact = { at: Place };\nexport const isFact = 1;\nexport function readFact() {}\nconst inner = 1;';
    const names = [...readExportedNames(parseSource('src/core/rig/facts.ts', text))];
    expect(names.sort()).toEqual(['Fact', 'Rig', 'isFact', 'readFact']);
  });
});

describe('what could make two machines disagree is refused in the core', () => {
  const refused: [string, string][] = [
    ['platform chance', 'Math.random();'],
    ['a power of the engine', 'Math.pow(2, 3);'],
    ['the same by its operator', 'export const a = (x: number) => x ** 2;'],
    ['the same by assignment', 'export let a = 2; a **= 2;'],
    ['a sine of the engine', 'Math.sin(1);'],
    ['Math taken apart', 'const { random } = Math;'],
    ['Math by a key', "Math['random']();"],
    ['Math under another name', 'const m = Math;'],
    ['a wall clock', 'new Date();'],
    ['the same', 'Date.now();'],
    ['a stop watch', 'performance.now();'],
    ['a timer', 'setTimeout(() => undefined, 1);'],
    ['an async function', 'export async function a() {}'],
    ['an async arrow', 'export const a = async () => 1;'],
    ['a promise', 'Promise.resolve(1);'],
    ['something loaded later', "const a = import('./other.ts');"],
    ['a language', 'new Intl.NumberFormat();'],
    ['a local number', '(1).toLocaleString();'],
    ['a local comparison', "'a'.localeCompare('b');"],
    ['the same by a key', "'a'['localeCompare']('b');"],
    ['a platform key', 'crypto.randomUUID();'],
    ['the page', 'document.title;'],
    ['everything there is', 'globalThis.a;'],
    ['a shorthand that takes a clock along', 'export const a = { performance };'],
    ['a sort without comparator', '[2, 1].sort();'],
    ['a copying sort without comparator', '[2, 1].toSorted();'],
  ];
  it.each(refused)('%s', (_title, text) => {
    expect(core(text)).not.toEqual([]);
  });

  it('but a member, a key, a string or a comment of that name is not, nor the members of Math that agree', () => {
    const text = [
      '// the Date of the permit: Math.random',
      "export const a = { performance: 1, location: 'Date' };",
      'export const b = a.performance + Math.sqrt(Math.max(2, Math.PI)) + Math.imul(2, 3);',
      'export const c = [2, 1].sort((x, y) => x - y);',
    ].join('\n');
    expect(core(text)).toEqual([]);
  });

  it('and outside the core nothing of this is asked', () => {
    expect(judgeCore(parseSource('src/session/clock.ts', 'Date.now(); Math.random();'))).toEqual([]);
  });
});

describe('what would hide a fault is refused everywhere', () => {
  const refused: [string, string, string][] = [
    ['a silenced compiler', 'src/panel/a.ts', '// @ts-ignore\nexport const a = 1;'],
    ['an expected error', 'tests/a.test.ts', '// @ts-expect-error\nexport const a = 1;'],
    ['a silenced linter', 'src/panel/a.ts', '/* eslint-disable */\nexport const a = 1;'],
    ['a silenced linter in markup', 'src/panel/A.svelte', '<!-- svelte-ignore a11y_autofocus -->\n<p>a</p>'],
    ['a cast to any', 'src/panel/a.ts', 'export const a = 1 as any;'],
    [
      'a cast to any in a component',
      'src/panel/A.svelte',
      '<script lang="ts">\n  const a = 1 as any;\n</script>\n{a}',
    ],
    ['work left behind', 'src/panel/a.ts', '// TODO: the rest\nexport const a = 1;'],
    ['a skipped test', 'tests/a.test.ts', "it.skip('holds', () => undefined);"],
    ['a lone test', 'tests/a.test.ts', "describe.concurrent.only('holds', () => undefined);"],
    ['a test skipped on a condition', 'tests/a.test.ts', "test.skipIf(true)('holds', () => undefined);"],
    ['a test that is meant to fail', 'tests/a.test.ts', "it.fails('holds', () => undefined);"],
    ['a file over the limit', 'src/panel/a.ts', 'export {};\n'.repeat(mostLines + 1)],
  ];
  it.each(refused)('%s', (_title, path, text) => {
    expect(tidy(path, text)).toHaveLength(1);
  });

  it('but a file at the limit, a word in a string, and iterators that skip are let through', () => {
    expect(tidy('src/panel/a.ts', 'export {};\n'.repeat(mostLines))).toEqual([]);
    expect(tidy('src/panel/a.ts', "export const a = 'eslint-disable TODO as any';\nlist.skip(1);")).toEqual(
      [],
    );
    expect(tidy('src/panel/a.ts', 'export const a = `TODO ${1} as any`;')).toEqual([]);
  });
});

describe('the table itself', () => {
  it('lets no two floors stand on each other', () => {
    const standsOn = (floor: string): string[] => Object.keys(floors[floor]?.from ?? {});
    const loops = Object.keys(floors).flatMap((floor) => {
      const reached = new Set<string>();
      const open = standsOn(floor);
      for (let next = open.pop(); next !== undefined; next = open.pop()) {
        if (reached.has(next)) continue;
        reached.add(next);
        open.push(...standsOn(next));
      }
      return reached.has(floor) ? [floor] : [];
    });
    expect(loops).toEqual([]);
  });

  it('grants only floors that it knows', () => {
    const unknown = Object.values(floors).flatMap((floor) =>
      Object.keys(floor.from).filter((name) => !(name in floors)),
    );
    expect(unknown).toEqual([]);
  });
});
