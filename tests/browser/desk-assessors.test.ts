import { rmSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drive, hasty, steady, type Hand } from '../../src/core/hands/index.ts';
import type { DecisionWord } from '../../src/core/review/index.ts';
import { recordText, sealRecord } from '../../src/core/run/index.ts';
import { deskEnglish } from '../../src/desk/words/en/index.ts';
import { deskSpanish } from '../../src/desk/words/es/index.ts';
import { yardScenario } from '../session/yard.ts';
import { choose, handIn, listed, saved, savingFolder, type HandedFile } from './deskHands.ts';
import { type App, openApp } from './harness.ts';

/** One run of a hand, under a name. */
function runOf(hand: Hand, person: string, attempt: number): HandedFile {
  const scenario = yardScenario();
  const { entries, run } = drive(scenario, hand);
  const by = { person, attempt, begunAt: `2026-11-0${attempt}T08:00:00Z` };
  return { name: `${person}.run.json`, text: recordText(sealRecord(scenario, entries, run, { by })) };
}

/** As in a browser that has WebCrypto and no Ed25519 in it. */
const withoutEd25519 = `for (const name of ['generateKey', 'importKey']) {
  SubtleCrypto.prototype[name] = () => Promise.reject(new DOMException('no such algorithm', 'NotSupportedError'));
}`;

const weightsOfHoldsAlone = [
  ['Hold points', '100'],
  ['Gas control', '0'],
  ['Technique', '0'],
  ['Choice of kit', '0'],
  ['Abnormal conditions', '0'],
] as const;

describe('two assessors at one desk, in a browser that cannot sign by itself', () => {
  let app: App;
  let folder: string;
  const people = ['Trainee 001', 'Trainee 002', 'Trainee 003'] as const;
  beforeAll(async () => {
    app = await openApp('#/', { height: 1000 });
    await app.page.evaluateOnNewDocument(withoutEd25519);
    await app.reload();
    folder = await savingFolder(app);
    await app.goTo('#/desk');
    await app.find('heading', 'The desk is empty');
    await handIn(app, [runOf(steady, people[0], 1), runOf(steady, people[1], 2), runOf(hasty, people[2], 3)]);
    await app.seeText('3 of 3 runs');
  });
  afterAll(async () => {
    await app.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function openRun(person: string): Promise<void> {
    await app.goTo('#/desk');
    await app.pressByKey('link', person);
    await app.find('heading', 'Replay');
  }

  async function pick(decision: DecisionWord): Promise<void> {
    const { [`decision.${decision}` as const]: says, [`decision.${decision}Means` as const]: means } =
      deskEnglish;
    const choice = await app.find('radio', `${says} ${means}`);
    await choice.click();
  }

  async function decide(person: string, assessor: string, decision: DecisionWord): Promise<void> {
    await openRun(person);
    await app.pressByKey('tab', 'Decision');
    await app.fill('Assessor’s name', assessor);
    await app.fill('Assessor’s role', 'Yard assessor');
    await pick(decision);
    await app.pressByKey('button', 'Decide and counter-sign');
    await app.seeText(`${assessor}, Yard assessor`);
  }

  async function judgeByHoldsAlone(): Promise<void> {
    await app.goTo('#/desk/rejudge');
    for (const [heading, weight] of weightsOfHoldsAlone) {
      const field = await app.find('spinbutton', heading);
      await field.click({ count: 3 });
      await field.type(weight);
    }
    await app.pressByKey('button', 'Judge again and show who changes');
    await app.seeText(/Of 3 runs [1-3] change/);
  }

  it('adds a finding with a reason, beside the machine’s judgement, and takes it off again', async () => {
    await openRun(people[0]);
    await app.pressByKey('button', 'In words');
    const judgement = (): Promise<string> => app.readText({ role: 'region', name: 'Judgement' });
    const scores = async (): Promise<readonly number[]> =>
      /Score \(pass at 80\)\s+([\d.]+)\s+([\d.]+)/
        .exec(await judgement())
        ?.slice(1)
        .map(Number) ?? [];
    const [machine, assessor] = await scores();
    expect(assessor).toBe(machine);
    await app.pressByKey('tab', 'Findings');
    await app.pressByKey('button', 'Add a finding');
    await app.fill('What was seen', 'Stood over the open tee.');
    const add = await app.find('button', 'Add it');
    expect(await add.evaluate((node) => (node as HTMLButtonElement).disabled)).toBe(true);
    await app.fill('Reason', 'I stood beside it.');
    await choose(app, 'Bears on', 'H5');
    const points = await app.find('spinbutton', 'Points it costs');
    await points.click({ count: 3 });
    await points.type('4');
    await app.pressByKey('button', 'Add it');
    await app.seeText('Reason: I stood beside it.');
    await app.seeText('Findings added: 1.');
    const [stands, lowered] = await scores();
    expect([stands, lowered]).toEqual([machine, machine - 4]);
    await app.screenshot('desk-added-finding');
    await app.reload();
    await app.seeText('Findings added: 1.');
    await app.pressByKey('tab', 'Findings');
    await app.pressByKey('button', 'Remove: Stood over the open tee.');
    await app.seeText('Findings added: 0.');
    expect(await scores()).toEqual([machine, machine]);
  });

  it('lets two decide on the same runs, each beside the other, and tells how far they agree', async () => {
    await decide(people[0], 'Assessor One', 'demonstrated');
    await app.pressByKey('button', 'Save this decision as a file');
    await decide(people[1], 'Assessor One', 'demonstrated');
    await decide(people[2], 'Assessor One', 'notYet');
    await decide(people[0], 'Assessor Two', 'demonstrated');
    expect(await app.readText()).toContain('Assessor One, Yard assessor');
    await decide(people[1], 'Assessor Two', 'notYet');
    await decide(people[2], 'Assessor Two', 'notYet');
    await app.goTo('#/desk/group');
    await app.find('heading', 'Agreement of two assessors');
    // By hand: they agree on 2 of 3; by chance (2·1 + 1·2)/9 = 4/9; kappa (2/3 − 4/9)/(1 − 4/9) = 0.4.
    await app.seeText(
      'Runs both decided: 3. They agree on 67 %; chance alone would give 44 %. Cohen’s kappa: 0.40.',
    );
    const table = await app.page.evaluate(() =>
      [...document.querySelectorAll('table')]
        .filter((one) => one.innerText.includes('Assessor One down, Assessor Two across'))
        .flatMap((one) => [...one.querySelectorAll('td')].map((cell) => Number(cell.innerText))),
    );
    expect(table).toEqual([1, 1, 0, 1]);
    await app.screenshot('desk-kappa');
    await app.goTo('#/desk');
    const reviews = (await listed(app)).map((line) => line.join('|'));
    expect(reviews.filter((line) => line.includes('assessors differ'))).toHaveLength(1);
  });

  it('changes an own decision by a new record with a reason, never the other’s', async () => {
    await openRun(people[1]);
    await app.pressByKey('tab', 'Decision');
    await app.seeText('Another assessor has decided about this run.');
    await app.seeText('Your decision about this run stands.');
    await app.fill('Why the earlier decision no longer stands', 'Seen again with the crew.');
    await pick('demonstrated');
    await app.pressByKey('button', 'Decide and counter-sign');
    await app.seeText('A later decision has taken the place of this one.');
    // each signature is checked by itself, after its decision is shown
    await app.page.waitForFunction(
      () => document.body.innerText.match(/Counter-signature fits/g)?.length === 3,
    );
    await app.goTo('#/desk/group');
    await app.seeText('Runs both decided: 3. They agree on 100 %');
  });

  it('checks a decision file on the page about signatures, and one that was changed', async () => {
    const text = await saved(folder, '.decision.json');
    await app.goTo('#/desk/proof');
    await app.find('heading', 'What a counter-signature proves');
    await app.seeText('This browser has no Ed25519 of its own');
    const check = async (written: string): Promise<void> => {
      const field = await app.page.waitForSelector('input[type=file][accept]');
      await field?.evaluate((input, given) => {
        const all = new DataTransfer();
        all.items.add(new File([given], 'a.decision.json'));
        input.files = all.files;
        input.dispatchEvent(new Event('change', { bubbles: true }));
      }, written);
    };
    await check(text);
    await app.seeText(/The signature fits\. Key [0-9a-f]{16}…, Assessor One/);
    await check(text.replace('Yard assessor', 'Yard manager'));
    await app.seeText('The signature does not fit');
    await check('{"milk":2}');
    await app.seeText('This is not a decision file');
  });

  it('judges the folder again by other weights, and keeps what changed when it is told to', async () => {
    const lineOf = async (person: string): Promise<string> =>
      (await listed(app)).find((line) => line[0] === person)?.join('|') ?? '';
    await app.goTo('#/desk');
    await app.seeText('3 of 3 runs');
    const before = await lineOf(people[2]);
    await judgeByHoldsAlone();
    await app.screenshot('desk-rejudged');
    await app.goTo('#/desk');
    await app.seeText('3 of 3 runs');
    expect(await lineOf(people[2]), 'nothing is kept by looking').toBe(before);
    await judgeByHoldsAlone();
    const keep = /Keep the \d changed judgements in the table/.exec(await app.readText())?.[0] ?? '';
    await app.pressByKey('button', keep);
    await app.seeText('Kept. The table and the group go by the changed judgement now.');
    await app.goTo('#/desk');
    await app.seeText('3 of 3 runs');
    const after = await lineOf(people[2]);
    expect(after).not.toBe(before);
    await app.reload();
    await app.seeText('3 of 3 runs');
    expect(await lineOf(people[2])).toBe(after);
    app.expectNoComplaints();
  });

  it('says in Spanish on every page what it says in English', async () => {
    const known = new Set<string>(Object.values(deskSpanish));
    const english = Object.values(deskEnglish).filter(
      (said) => said.includes(' ') && !said.includes('{') && !known.has(said),
    );
    expect(english.length).toBeGreaterThan(100);
    const expectSpanish = async (page: string): Promise<void> => {
      const text = await app.readText();
      expect(
        english.filter((said) => text.includes(said)),
        page,
      ).toEqual([]);
      await app.screenshot(`desk-spanish-${page}`);
    };
    await app.goTo('#/desk');
    await app.pressByKey('button', 'Settings');
    await choose(app, 'Language', 'Español');
    await app.pressByKey('button', 'Cerrar');
    await app.find('heading', deskSpanish['desk.title']);
    await expectSpanish('table');
    for (const page of ['group', 'rejudge', 'keeping', 'proof'] as const) {
      await app.goTo(`#/desk/${page}`);
      await app.find('heading', deskSpanish[`${page}.title`]);
      await expectSpanish(page);
    }
    await app.goTo('#/desk');
    await app.pressByKey('link', people[2]);
    await app.find('heading', deskSpanish['run.replay']);
    for (const tab of ['evidence', 'findings', 'story', 'notes', 'compare', 'decision'] as const) {
      await app.pressByKey('tab', deskSpanish[`run.tab.${tab}`]);
      await expectSpanish(tab);
    }
    await app.pressByKey('link', deskSpanish['run.report']);
    const frame = await app.page.waitForSelector('iframe');
    expect(await frame?.evaluate((node) => node.srcdoc)).toContain('<html lang="es">');
    await expectSpanish('report');
    app.expectNoComplaints();
  });
});
