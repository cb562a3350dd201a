import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drive, hasty } from '../../src/core/hands/index.ts';
import { judge } from '../../src/core/judge/index.ts';
import { recordText, sealRecord } from '../../src/core/run/index.ts';
import { clock, voiceOf } from '../../src/text/index.ts';
import { yardScenario } from '../session/yard.ts';
import { type App, openApp } from './harness.ts';

/** A hasty crew's run, made and judged here as the command line does it, then opened in the page as a file. */
describe('the debrief of a run made elsewhere', () => {
  const scenario = yardScenario();
  const { entries, run } = drive(scenario, hasty);
  const record = sealRecord(scenario, entries, run);
  const judged = judge(scenario, record);
  const voice = voiceOf(scenario.job, 'us');

  let app: App;
  beforeAll(async () => {
    app = await openApp('#/');
    const field = await app.page.waitForSelector('input[type=file]');
    await field?.evaluate((input, text) => {
      const files = new DataTransfer();
      files.items.add(new File([text], 'hasty.run.json', { type: 'application/json' }));
      input.files = files.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    }, recordText(record));
    await app.find('heading', 'Replay');
    await app.pressByKey('button', 'In words');
  });
  afterAll(() => app.close());

  it('gives the verdict, the score and the findings that are given elsewhere', async () => {
    const said = await app.readText();
    expect(judged.verdict).toBe('critical');
    expect(said).toContain(`${Math.round(judged.score * 10) / 10} of 100`);
    for (const finding of judged.findings) expect(said).toContain(voice.finding(finding).title);
    expect(said).not.toContain('ends differently');
    expect(said).toContain('It does not qualify anyone');
    app.expectNoComplaints();
  });

  it('jumps from a finding to its moment in the replay, and from action to action', async () => {
    const finding = [...judged.findings].sort((a, b) => a.atS - b.atS)[1];
    const replayClock = () => app.page.$eval('#moment', (bar) => Number((bar as HTMLInputElement).value));
    await app.page.evaluate((title) => {
      const button = [...document.querySelectorAll('button')].find((one) =>
        one.getAttribute('aria-label')?.endsWith(title),
      );
      button?.focus();
    }, voice.finding(finding).title);
    await app.page.keyboard.press('Enter');
    await app.page.waitForFunction(
      (atS) => Math.abs(Number(document.querySelector<HTMLInputElement>('#moment')?.value) - atS) <= 1,
      {},
      finding.atS,
    );
    const there = await replayClock();
    await app.pressByKey('button', 'Action before');
    const before = await replayClock();
    expect(before).toBeLessThanOrEqual(there);
    await app.pressByKey('button', 'Action after');
    expect(await replayClock()).toBeGreaterThanOrEqual(before);
    expect(app.page.url()).toMatch(/#\/debrief\/[0-9a-f]+\/\d+$/);
  });

  it('stands at the same moment after a reload', async () => {
    const address = app.page.url();
    await app.reload();
    await app.find('heading', 'Replay');
    expect(app.page.url()).toBe(address);
    const atS = Number(address.split('/').at(-1));
    await app.seeText(clock(atS).padStart(7, '0:'));
  });

  it('scrubs to any moment within a tenth of a second of script', async () => {
    const slowestMs = await app.page.evaluate(async () => {
      const bar = document.querySelector<HTMLInputElement>('#moment');
      if (bar === null) return Infinity;
      const times: number[] = [];
      for (const share of [0.9, 0.1, 0.5, 0.99, 0.3, 0.7]) {
        bar.value = String(Math.round(Number(bar.max) * share));
        const fromMs = performance.now();
        bar.dispatchEvent(new Event('input', { bubbles: true }));
        await Promise.resolve();
        times.push(performance.now() - fromMs);
      }
      return Math.max(...times.slice(1));
    });
    console.log(`slowest scrub: ${slowestMs.toFixed(1)} ms`);
    expect(slowestMs).toBeLessThan(100);
  });
});
