import { describe, expect, it } from 'vitest';
import { factsFile } from './frame/floorTable.ts';
import { judgeCore } from './frame/judgeCore.ts';
import { judgeImports } from './frame/judgeImports.ts';
import { judgeTidiness } from './frame/judgeTidiness.ts';
import { readCode } from './frame/listCode.ts';
import { readVocabulary } from './frame/readImports.ts';

const sourceFiles = readCode('src');
const testFiles = readCode('tests');

describe('the floors of the house', () => {
  it('has read the source before it judges it', () => {
    expect(sourceFiles.length).toBeGreaterThan(10);
    expect(testFiles.length).toBeGreaterThan(5);
  });

  it('lets every file import only what its floor grants, and enter folders through their index', () => {
    const facts = sourceFiles.find((source) => source.path === factsFile);
    const factNames = facts === undefined ? new Set<string>() : readVocabulary(facts);
    expect(sourceFiles.flatMap((source) => judgeImports(source, factNames))).toEqual([]);
  });

  it('keeps clocks, chance, languages and engine-dependent arithmetic out of the core', () => {
    expect(sourceFiles.flatMap(judgeCore)).toEqual([]);
  });

  it('has no file over the line limit, no suppression, no passed-over test and no work left behind', () => {
    expect([...sourceFiles, ...testFiles].flatMap(judgeTidiness)).toEqual([]);
  });
});
