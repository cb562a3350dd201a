import { constants } from '../catalogue/index.ts';
import { ATM_PA, drawUniform, type Generator, pow, psig, seedGenerator, toAbs } from '../units/index.ts';
import { compile } from './compile.ts';
import { fillMol } from './contents.ts';
import { AIR, FUEL_GAS } from './gases.ts';
import type { Contents, Link, Network, Step } from './network.ts';
import { firstStepS, stepTo } from './solver.ts';

const hole = (id: string, from: string, to: string, cdAM2: number): Link => ({
  id,
  from,
  to,
  law: 'orifice',
  cdAM2,
});
const pipe = (id: string, from: string, to: string, lengthM: number): Link => ({
  id,
  from,
  to,
  law: 'pipe',
  diameterM: constants.serviceBoreM.value,
  lengthM,
  roughnessM: constants.pipeRoughnessM.value,
});
const slot = (id: string, from: string, to: string, perimeterM: number, gapM: number): Link => ({
  id,
  from,
  to,
  law: 'slot',
  perimeterM,
  gapM,
  lengthM: 4.25e-3,
  cd: constants.slotDischarge.value,
});

/** Cells of the bench rig, litres. */
const VOLUMES_L = {
  bore: 0.02,
  barrel: 0.1,
  near: 5,
  far: 5,
  chamber: 0.66,
  ball: 0.35,
  above: 0.26,
  head: 0.05,
};

/**
 * A rig on a live main at 35 psig as the solver meets it: eight cells, fourteen links. Measures are taken on it.
 * More segments of service (0 or more) lengthen it cell by cell.
 */
export function liveRig(moreSegments = 0): Network {
  const cells = Object.entries(VOLUMES_L).map(([id, litres]) => ({ id, volumeM3: litres * 1e-3 }));
  const links: Link[] = [
    hole('main', 'main', 'bore', 3.4e-4),
    hole('tee', 'bore', 'barrel', 3.4e-4),
    hole('port', 'barrel', 'near', 3e-4),
    pipe('service', 'near', 'far', 9),
    slot('plug', 'barrel', 'chamber', 0.1, 3e-7),
    slot('ring', 'chamber', 'air', 0.125, 2.7e-6),
    hole('valve', 'chamber', 'ball', 3e-3),
    hole('valveAbove', 'ball', 'above', 3e-3),
    hole('hose', 'above', 'head', 5e-5),
    hole('vent', 'head', 'air', 1e-9),
    {
      id: 'relief',
      from: 'head',
      to: 'air',
      law: 'relief',
      cdAM2: 2e-5,
      setDropPa: 455054,
      fullDropPa: 475738,
    },
    { id: 'check', from: 'air', to: 'head', law: 'check', cdAM2: 1e-5 },
    hole('joint', 'above', 'air', 2e-11),
    hole('curb', 'far', 'air', 1e-12),
  ];
  for (let i = 0; i < moreSegments; i += 1) {
    cells.push({ id: `far${i}`, volumeM3: 1e-3 });
    links.push(pipe(`service${i}`, i === 0 ? 'far' : `far${i - 1}`, `far${i}`, 2));
  }
  return {
    cells,
    boundaries: [
      { id: 'main', pressureAbsPa: toAbs(psig(35)), gasFraction: 1 },
      { id: 'air', pressureAbsPa: ATM_PA, gasFraction: 0 },
    ],
    links,
    temperatureK: constants.siteTemperatureK.value,
    gas: FUEL_GAS,
    air: AIR,
  };
}

/** Contents with every cell at one absolute pressure, Pa, and gas fraction. */
export function evenContents(network: Network, pressureAbsPa: number, gasFraction: number): Contents {
  const fills = network.cells.map((cell) =>
    fillMol(cell.volumeM3, pressureAbsPa, gasFraction, network.temperatureK),
  );
  return { airMol: fills.map((fill) => fill.airMol), gasMol: fills.map((fill) => fill.gasMol) };
}

/** Every hole drawn from 1e-10 to 3e-3 m², every gap from 1e-8 to 1e-3 m, for 10 ms to 10 s. */
function drawOpenings(start: Generator): {
  network: Network;
  durationS: number;
  generator: Generator;
} {
  let generator = start;
  const draw = (): number => {
    const drawn = drawUniform(generator);
    generator = drawn.generator;
    return drawn.value;
  };
  const network = liveRig();
  network.links = network.links.map((link): Link => {
    if (link.law === 'orifice') return { ...link, cdAM2: pow(10, -10 + 7.5 * draw()) };
    return link.law === 'slot' ? { ...link, gapM: pow(10, -8 + 5 * draw()) } : link;
  });
  return { network, durationS: pow(10, -2 + 3 * draw()), generator };
}

/** What random openings did to the solver. */
export interface OpeningsReport {
  count: number;
  /** Openings after which a content was negative, not a number, or mass did not close to 1e-12. */
  failures: number;
  maxSteps: number;
  steps: number;
  worstClosure: number;
  /** What the cells held at the end: equal on every machine for one seed and count. */
  contents: Contents;
}

/** Opens and shuts everything at random so many times, each from where the last one ended. */
export function openAtRandom(count: number, seed: number): OpeningsReport {
  let generator = seedGenerator(seed);
  let contents = evenContents(liveRig(), ATM_PA, 0);
  const report = { count, failures: 0, maxSteps: 0, steps: 0, worstClosure: 0 };
  for (let i = 0; i < count; i += 1) {
    const drawn = drawOpenings(generator);
    generator = drawn.generator;
    const net = compile(drawn.network);
    const step = stepTo(net, 0, contents, firstStepS(net, 0, contents), drawn.durationS);
    const closure = closureOf(drawn.network, contents, step);
    const sound = [...step.contents.airMol, ...step.contents.gasMol].every(
      (mol) => mol >= 0 && mol < Infinity,
    );
    if (!sound || !(closure <= 1e-12)) report.failures += 1;
    report.worstClosure = Math.max(report.worstClosure, closure);
    report.maxSteps = Math.max(report.maxSteps, step.steps);
    report.steps += step.steps;
    contents = step.contents;
  }
  return { ...report, contents };
}

/** The worst of all cells and gases: |held before + in − out − held after| over what was held and moved. */
export function closureOf(network: Network, before: Contents, step: Step): number {
  let worst = 0;
  const gases = [
    [before.airMol, step.contents.airMol, step.linkAirMol],
    [before.gasMol, step.contents.gasMol, step.linkGasMol],
  ];
  network.cells.forEach((cell, c) => {
    for (const [held, after, moved] of gases) {
      let left = held[c] - after[c];
      let throughput = before.airMol[c] + before.gasMol[c];
      network.links.forEach((link, l) => {
        if (link.from === cell.id) left -= moved[l];
        if (link.to === cell.id) left += moved[l];
        if (link.from === cell.id || link.to === cell.id) throughput += Math.abs(moved[l]);
      });
      worst = Math.max(worst, Math.abs(left) / throughput);
    }
  });
  return worst;
}
