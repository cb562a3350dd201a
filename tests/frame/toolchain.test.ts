import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const lockfileText = readFileSync(new URL('../../package-lock.json', import.meta.url), 'utf8');
const packageText = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');

describe('the kit list', () => {
  it('names every package by one exact version, so that every yard unpacks the same kit', () => {
    const kit = JSON.parse(packageText) as Record<string, Record<string, string>>;
    const loose = Object.entries({ ...kit.dependencies, ...kit.devDependencies })
      .filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))
      .map(([name, version]) => `${name} ${version}`);
    expect(loose).toEqual([]);
  });

  it('keeps the address of no registry in the lockfile', () => {
    expect(lockfileText).not.toContain('"resolved"');
    expect(lockfileText.match(/"integrity"/g)?.length ?? 0).toBeGreaterThan(100);
  });
});
