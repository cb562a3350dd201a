import { describe, expect, it } from 'vitest';
import { wordFiles } from './frame/floorTable.ts';
import { judgeCore } from './frame/judgeCore.ts';
import { judgeImports } from './frame/judgeImports.ts';
import { judgeTidiness } from './frame/judgeTidiness.ts';
import { readCode } from './frame/listCode.ts';
import { readExportedNames } from './frame/readImports.ts';

const sourceFiles = readCode('src');
const testFiles = readCode('tests');

describe('the floors of the house', () => {
  it('has read the source before it judges it', () => {
    expect(sourceFiles.length).toBeGreaterThan(10);
    expect(testFiles.length).toBeGreaterThan(5);
  });

  it('lets every file import only what its floor grants, and enter folders through their index', () => {
    const words = sourceFiles.filter((source) => wordFiles.includes(source.path)).map(readExportedNames);
    const rigWords = new Set(words.flatMap((names) => [...names]));
    expect(sourceFiles.flatMap((source) => judgeImports(source, rigWords))).toEqual([]);
  });

  it('keeps clocks, chance, languages and engine-dependent arithmetic out of the core', () => {
    expect(sourceFiles.flatMap(judgeCore)).toEqual([]);
  });

  it('has no file over the line limit, no suppression, no passed-over test and no work left behind', () => {
    expect([...sourceFiles, ...testFiles].flatMap(judgeTidiness)).toEqual([]);
  });
});
