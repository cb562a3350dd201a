import type { Contents, Link, Network, Step } from '../../src/core/physics/index.ts';
import { drawUniform, type Generator, pow } from '../../src/core/units/index.ts';
import { ATM_PA } from '../../src/core/units/index.ts';
import { abs, air, fuelGas, SITE_K } from './vessels.ts';

const hole = (id: string, from: string, to: string, cdAM2: number): Link => ({
  id,
  from,
  to,
  law: 'orifice',
  cdAM2,
});

/** A rig on a live main as the solver meets it: eight cells, fourteen links, every law but the regulator. */
export function liveRig(): Network {
  const volumes = {
    bore: 0.02,
    barrel: 0.1,
    near: 5,
    far: 5,
    chamber: 0.66,
    ball: 0.35,
    above: 0.26,
    head: 0.05,
  };
  return {
    cells: Object.entries(volumes).map(([id, litres]) => ({ id, volumeM3: litres * 1e-3 })),
    boundaries: [
      { id: 'main', pressureAbsPa: abs(35), gasFraction: 1 },
      { id: 'air', pressureAbsPa: ATM_PA, gasFraction: 0 },
    ],
    links: [
      hole('main', 'main', 'bore', 3.4e-4),
      hole('tee', 'bore', 'barrel', 3.4e-4),
      hole('port', 'barrel', 'near', 3e-4),
      {
        id: 'service',
        from: 'near',
        to: 'far',
        law: 'pipe',
        diameterM: 0.02664,
        lengthM: 9,
        roughnessM: 4.572e-5,
      },
      {
        id: 'plug',
        from: 'barrel',
        to: 'chamber',
        law: 'slot',
        perimeterM: 0.1,
        gapM: 3e-7,
        lengthM: 0.017,
        cd: 0.6,
      },
      {
        id: 'ring',
        from: 'chamber',
        to: 'air',
        law: 'slot',
        perimeterM: 0.125,
        gapM: 2.7e-6,
        lengthM: 4.25e-3,
        cd: 0.6,
      },
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
    ],
    temperatureK: SITE_K,
    gas: fuelGas,
    air,
  };
}

/** Openings by name, effective m²; plug and ring by their gap, m. */
export interface Openings {
  main?: number;
  vent?: number;
  hose?: number;
  curb?: number;
  valve?: number;
  plugGapM?: number;
  ringGapM?: number;
}

/** The same network with some openings set. */
export function setOpenings(network: Network, openings: Openings): Network {
  const areas: Record<string, number | undefined> = { ...openings };
  const gaps: Record<string, number | undefined> = { plug: openings.plugGapM, ring: openings.ringGapM };
  const links = network.links.map((link): Link => {
    if (link.law === 'orifice') return { ...link, cdAM2: areas[link.id] ?? link.cdAM2 };
    return link.law === 'slot' ? { ...link, gapM: gaps[link.id] ?? link.gapM } : link;
  });
  return { ...network, links };
}

/** Every hole drawn from 1e-10 to 3e-3 m², every gap from 1e-8 to 1e-3 m, for 10 ms to 10 s. */
export function randomOpenings(start: Generator): {
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
