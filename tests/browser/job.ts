import { figureIn, torqueIn, type Person } from './person.ts';

/**
 * The whole job in the words of the screen, in SI. Amounts a crew would decide by feel or by a gauge are decided by
 * what the log and the gauges say, never by anything the screen does not show.
 */

export const sign = (id: string): string => `Sign ${id}`;
export const shutValve = 'Isolation valve, shut: fully';
export const openValve = 'Isolation valve, open: fully';
export const openBleed = 'Bleed: open';
export const shutBleed = 'Bleed: shut';
export const legs = ['Chain A, left', 'Chain A, right', 'Chain B, left', 'Chain B, right'] as const;

const inspected = [
  'Seat ring 1',
  'Saddle',
  'Chain no. 1',
  'Chain no. 2',
  'Isolation valve',
  'Lower spool',
  'Upper spool',
  'Sight cap',
  'Test head',
  'Rod barrel',
  'Socket 1',
  'Stopper holder',
  'Depth collar',
  'Bore stopper 1',
  'Keeper plug 1',
  'Cup gasket 1',
  'Split collar 1',
  'Closing plug 1 no. 1',
  'Closing plug 1 no. 2',
  'Valve cap',
  'Gauge ring',
  'Service cap 1',
] as const;

/** Stage 1: site, people, service, pressures, workpiece, kit; the first signature. */
export async function setUp(p: Person): Promise<void> {
  await p.on('Site');
  for (const task of [
    'Read the work order',
    'See that the permit is in hand',
    'Call gas control',
    'Find the valves that shut the main',
    'Call the second person to the hole',
  ])
    await p.act(`Order and people: ${task}`);
  for (const task of [
    'Trace the service at the main',
    'Trace the service at the meter',
    'Shut the customer off',
    'Tag the customer’s valve',
    'Check for a feed from elsewhere',
  ])
    await p.act(`The customer: ${task}`);
  for (const task of [
    'Clear ignition sources',
    'Set out the fire extinguisher',
    'Set the barricade',
    'Set the ladder',
  ])
    await p.act(`Round the hole: ${task}`);
  await p.on('Gauges & detector');
  await p.acts('Gas detector: bump test', 'Gas detector: low in the hole');
  for (const gauge of ['Main gauge', 'Second gauge'])
    await p.acts(`${gauge}: check its zero`, `${gauge}: read and write down`);
  await p.on('Look & listen');
  await p.acts(
    'Look at: wrap on the main',
    'Look at: wall of the main under the chains',
    'Look at: coupling and its weld',
    'Look at: boss',
  );
  await p.on('Kit board');
  for (const piece of inspected) await p.act(`Inspect: ${piece}`);
  await p.on('Bleed & hose');
  await p.acts('Bleed hose: lead it out of the hole, downwind', sign('H1'));
}

async function drawUp(p: Person, turns: string, firmNm: number): Promise<void> {
  for (let rounds = 0; rounds < 14; rounds += 1) {
    let slackest = firmNm;
    for (const leg of legs) {
      const line = (await p.act(`${leg} tensioner: ${turns} tighter`)).join(' ');
      slackest = Math.min(slackest, torqueIn(line));
    }
    if (slackest >= firmNm) return;
  }
}

export async function seatSaddle(p: Person): Promise<void> {
  await p.on('Ring & saddle');
  await p.act('Put on: Saddle');
  await p.on('Chains');
  await p.acts('Chain A: hook', 'Chain B: hook');
  await drawUp(p, '1/12 turn', 1.4);
  for (let tapped = 0; tapped < 2; tapped += 1) {
    await p.acts('Chain A: tap the links flat', 'Chain B: tap the links flat');
    await drawUp(p, '1/24 turn', 1.7);
  }
  await p.on('Look & listen');
  await p.act('Look at: chains and how they bear');
}

/** Stage 2: bare metal, the plug's bite, ring, saddle, chains, valve. */
export async function sealOnTee(p: Person): Promise<void> {
  await p.on('Clean');
  await p.acts('Clean: boss', 'Clean: pipe under the chains', 'Clean: coupling');
  await p.on('Look & listen');
  await p.acts('Look at: boss', 'Look at: coupling and its weld');
  await p.on('Measure & mark');
  await p.act('Paint: paint mark across top plug and tee');
  await p.on('Top plug');
  await p.app.press('checkbox', p.tongue.label('Hold back with the second wrench'));
  await p.acts('Top plug, back: 1/12 turn', 'Top plug, in: 1/12 turn');
  await p.on('Leak fluid');
  await p.act('Leak fluid on: top plug');
  await p.on('Ring & saddle');
  await p.act('Put on: Seat ring 1');
  await p.on('Chains');
  await p.acts('Put on: Chain no. 1', 'Put on: Chain no. 2');
  await seatSaddle(p);
  await p.on('Valve & spools');
  await p.acts('Put on: Isolation valve', openValve, shutValve);
}

async function easeOpen(p: Person): Promise<void> {
  await p.on('Valve & spools');
  await p.acts('Isolation valve, open: ease a little', 'Isolation valve, open: a quarter of the way');
  await p.act(openValve);
}

export async function fluid(p: Person, ...places: string[]): Promise<void> {
  await p.on('Leak fluid');
  for (const place of places) {
    const said = (await p.act(`Leak fluid on: ${place}`)).join(' ');
    if (!p.tongue.says.noBubbles.test(said)) throw new Error(`Leak fluid on the ${place}: ${said}`);
  }
}

export async function readGauge(p: Person, gauge: string): Promise<number> {
  await p.on('Gauges & detector');
  return figureIn((await p.act(`${gauge}: read and write down`)).join(' '), /(-?[\d.,]+) kPa/);
}

async function pumpTo(p: Person, kPa: number): Promise<void> {
  await p.on('Test head');
  for (let strokes = 0; strokes < 90; strokes += 1) {
    const reads = await p.gauge('Test head');
    if (reads >= kPa) return;
    await p.act(kPa - reads > 110 ? 'Hand pump: 5 strokes' : 'Hand pump: 1 stroke');
  }
  throw new Error(`The chamber never built up to ${kPa} kPa`);
}

export async function ventDown(p: Person): Promise<void> {
  await p.on('Test head');
  await p.acts('Vent: open', 'Wait 10 s', 'Vent: shut');
}

export async function watchRise(p: Person): Promise<void> {
  const start = await readGauge(p, 'Test-head gauge');
  await p.acts('Wait 1 min', 'Wait 1 min', 'Wait 10 s');
  if ((await readGauge(p, 'Test-head gauge')) - start > 3.4) throw new Error('The vented chamber rose');
}

export async function testHeadOn(p: Person): Promise<void> {
  await p.on('Test head');
  await p.act('Put on: Test head');
  await p.on('Gauges & detector');
  await p.act('Test-head gauge: check its zero');
  await p.on('Test head');
  await p.act('Vent: shut');
  await easeOpen(p);
}

export async function proveChamber(p: Person, places: readonly string[]): Promise<number> {
  await pumpTo(p, 24);
  await readGauge(p, 'Test-head gauge');
  await fluid(p, ...places);
  await pumpTo(p, 255);
  await p.acts('Wait 1 min', 'Wait 10 s');
  const start = await readGauge(p, 'Test-head gauge');
  await fluid(p, ...places);
  await p.acts('Wait 5 min', 'Wait 10 s');
  const end = await readGauge(p, 'Test-head gauge');
  if (start - end > 3.4) throw new Error(`The chamber fell from ${start} to ${end} kPa`);
  await p.on('Valve & spools');
  await p.act(shutValve);
  await ventDown(p);
  await p.on('Valve & spools');
  await p.acts(openValve, 'Wait 10 s');
  await readGauge(p, 'Test-head gauge');
  return end;
}

export async function testHeadOff(p: Person): Promise<void> {
  await p.on('Valve & spools');
  await p.act(shutValve);
  await p.on('Test head');
  await p.acts('Vent: open', 'Wait 10 s', 'Take off: Test head');
}

/** Stage 3: the first chamber proved with air, its valve's seat too, then vented and watched. */
export async function proveFirst(p: Person): Promise<number> {
  await readGauge(p, 'Main gauge');
  await testHeadOn(p);
  const held = await proveChamber(p, [
    'saddle’s seat',
    'joint below the isolation valve',
    'joint of the piece on top',
  ]);
  await ventDown(p);
  await watchRise(p);
  await p.act(sign('H2'));
  await testHeadOff(p);
  return held;
}

export async function barrelOn(p: Person, before: readonly string[] = []): Promise<void> {
  await p.on('Rod');
  for (const button of before) await p.act(button);
  if ((await p.attempt('Put on: Rod barrel')) === null) {
    await p.on('Valve & spools');
    await p.act('Put on: Upper spool');
    await p.on('Rod');
    await p.act('Put on: Rod barrel');
  }
  await p.act('Rod: hold');
  await easeOpen(p);
  await fluid(p, 'joint of the piece on top');
}

export async function bleedAbove(p: Person): Promise<void> {
  await p.on('Bleed & hose');
  await p.acts(openBleed, 'Wait until quiet', 'Wait 10 s', shutBleed, 'Wait 10 s', 'Wait 10 s', 'Wait 10 s');
  const said = (await p.act(openBleed)).join(' ');
  if (!p.tongue.says.noPuff.test(said)) throw new Error(`Above the shut valve: ${said}`);
}

export async function rodUpBarrelOff(p: Person): Promise<void> {
  await p.on('Rod');
  await p.act('Rod up: until it stops');
  await p.on('Valve & spools');
  await p.act(shutValve);
  await bleedAbove(p);
  await p.on('Rod');
  await p.act('Take off: Rod barrel');
}

/** Stage 4: the top plug unscrewed and brought up through the valve. */
export async function drawPlug(p: Person): Promise<void> {
  await barrelOn(p, ['Fit to the rod: Socket 1']);
  await p.on('Rod');
  await p.actUntil('Rod down: until it stops', p.tongue.says.hasHold, 2);
  await p.actUntil('Rod, turn counter-clockwise: 1 turn', p.tongue.says.plugFree, 16);
  await rodUpBarrelOff(p);
  await p.on('Rod');
  await p.act('Tip: take off what hangs on it');
}

export async function lookDown(p: Person): Promise<string> {
  await p.on('Look & listen');
  await p.act('Put on: Sight cap');
  await easeOpen(p);
  await fluid(p, 'joint of the piece on top');
  await p.on('Look & listen');
  return (await p.act('Look at: bore, through the sight cap with the lamp')).join(' ');
}

export async function sightCapOff(p: Person): Promise<void> {
  await p.on('Valve & spools');
  await p.act(shutValve);
  await bleedAbove(p);
  await p.on('Look & listen');
  await p.act('Take off: Sight cap');
}

/** Stage 5: a look down the open bore. */
export async function lookBore(p: Person): Promise<void> {
  await lookDown(p);
  await p.act(sign('H3'));
  await sightCapOff(p);
}
