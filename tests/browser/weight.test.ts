import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { appFolder } from '../../src/setup/places.mjs';
import { type App, openApp } from './harness.ts';
import { personAt } from './person.ts';

/**
 * Budgets of this project, KiB of script after gzip (assumed by us, no outside source): a training yard's
 * connection is slow, and the home page must not wait for the picture. A language besides English is fetched only by
 * who asks for it, in files of its own, and is weighed by itself. So is an exercise: it is fetched when it is opened.
 * So are the review desk and the scenario bench, which an apprentice never fetches; most of each is the engine once
 * more, for its worker.
 */
const budgetKiB = {
  firstRoute: 60,
  pictureChunk: 130,
  practice: 402,
  furtherLanguage: 45,
  exercise: 12,
  desk: 225,
  bench: 225,
};

const scripts = readdirSync(appFolder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.js'))
  .map((name) => {
    const bytes = readFileSync(join(appFolder, name));
    return { name, text: bytes.toString('utf8'), sizeKiB: gzipSync(bytes, { level: 9 }).length / 1024 };
  });

type Script = (typeof scripts)[number];

/** Scripts that can come to be fetched from these on, without ever going to those. */
function fetchedFrom(begun: readonly Script[], never: readonly Script[] = []): ReadonlySet<Script> {
  const found = new Set<Script>();
  function follow(script: Script): void {
    if (never.includes(script) || found.has(script)) return;
    found.add(script);
    for (const other of scripts) if (fetches(script, other)) follow(other);
  }
  for (const script of begun) follow(script);
  return found;
}

/** The part a workplace begins with. */
function workplace(name: string): Script {
  const found = scripts.find((script) => new RegExp(`^${name}-`).test(fileOf(script)));
  if (found === undefined) throw new Error(`the ${name} is no part of its own`);
  return found;
}

const fileOf = ({ name }: Script): string => name.split(/[\\/]/).pop() ?? name;
const quotes = ['"', "'", '`'];
const fetches = (script: Script, other: Script): boolean =>
  ['from', 'import', 'import('].some((how) =>
    quotes.some((quote) => script.text.includes(`${how}${quote}./${fileOf(other)}`)),
  ) || quotes.some((quote) => script.text.includes(`new URL(${quote}${fileOf(other)}`));

const sumKiB = (parts: readonly { sizeKiB: number }[]): number =>
  parts.reduce((sum, part) => sum + part.sizeKiB, 0);

/** The scripts this page has fetched so far. */
async function fetchedScripts(app: App): Promise<typeof scripts> {
  const fetched = await app.page.evaluate(() =>
    performance.getEntriesByType('resource').map((entry) => new URL(entry.name).pathname.slice(1)),
  );
  return scripts.filter((script) => fetched.includes(script.name.replaceAll('\\', '/')));
}

describe('the weight of the page', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp('#/');
  });
  afterAll(() => app.close());

  it('lets the first route be read without fetching more than its share', async () => {
    await app.page.waitForSelector('h1');
    await app.page.waitForNetworkIdle();
    const first = await fetchedScripts(app);
    expect(first.length).toBeGreaterThan(0);
    console.log(`first route: ${sumKiB(first).toFixed(1)} KiB of script in ${first.length} files`);
    expect(sumKiB(first)).toBeLessThanOrEqual(budgetKiB.firstRoute);
    app.expectNoComplaints();
  });

  it('keeps the picture in a part of its own, and a practice from start to debrief within bounds', async () => {
    await app.goTo('#/practice/abandon-1in-tee-on-4in-main');
    await app.pressByKey('button', 'Begin');
    await app.pressByKey('button', 'Pause');
    await app.find('combobox', 'View');
    await personAt(app).on('Stop & refer');
    await app.pressByKey('button', 'Stop work and refer back, because: another reason');
    await app.pressByKey('button', 'Yes');
    await app.pressByKey('link', 'Go to the debrief');
    await app.find('heading', 'Replay');
    await app.page.waitForNetworkIdle();
    const picture = scripts.filter((script) => script.text.includes('WebGLRenderer'));
    const exercises = scripts.filter(
      (script) => /^scenario-/.test(fileOf(script)) && script.text.includes('workOrder:{'),
    );
    const html = readFileSync(join(appFolder, 'index.html'), 'utf8');
    const [desk, bench] = [workplace('desk'), workplace('bench')];
    const without = fetchedFrom(
      scripts.filter((script) => html.includes(fileOf(script))),
      [desk, bench],
    );
    /* An exercise's brief comes with the exercise. */
    const languages = scripts.filter(
      (script) =>
        without.has(script) && script.text.includes('tapón de retención') && !/^brief\./.test(fileOf(script)),
    );
    const alone = (place: Script): readonly Script[] =>
      [
        ...fetchedFrom(
          [place],
          [desk, bench].filter((other) => other !== place),
        ),
      ].filter((script) => !without.has(script) && !exercises.includes(script));
    const practice = (await fetchedScripts(app)).filter(
      (script) => ![...languages, ...exercises].includes(script),
    );
    const heaviest = Math.max(...exercises.map((script) => script.sizeKiB));
    console.log(
      `picture: ${sumKiB(picture).toFixed(1)} KiB, a practice from start to debrief in English: ${sumKiB(practice).toFixed(1)} KiB, ` +
        `Spanish besides: ${sumKiB(languages).toFixed(1)} KiB, ` +
        `${exercises.length} exercises of at most ${heaviest.toFixed(1)} KiB, ` +
        `the desk and its worker besides: ${sumKiB(alone(desk)).toFixed(1)} KiB, ` +
        `the bench and its worker besides: ${sumKiB(alone(bench)).toFixed(1)} KiB`,
    );
    expect(languages.length).toBeGreaterThan(0);
    expect(sumKiB(languages)).toBeLessThanOrEqual(budgetKiB.furtherLanguage);
    expect(exercises.length).toBeGreaterThanOrEqual(12);
    for (const [place, most] of [
      [desk, budgetKiB.desk],
      [bench, budgetKiB.bench],
    ] as const) {
      expect(sumKiB(alone(place))).toBeGreaterThan(120);
      expect(sumKiB(alone(place))).toBeLessThanOrEqual(most);
    }
    expect(heaviest).toBeLessThanOrEqual(budgetKiB.exercise);
    expect(picture.length).toBeGreaterThan(0);
    expect(sumKiB(picture)).toBeLessThanOrEqual(budgetKiB.pictureChunk);
    expect(sumKiB(practice)).toBeLessThanOrEqual(budgetKiB.practice);
  });
});
