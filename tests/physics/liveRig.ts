import { type Link, liveRig, type Network } from '../../src/core/physics/index.ts';

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

/** The bench rig with some openings set. */
export function rigWith(openings: Openings): Network {
  const network = liveRig();
  const areas: Record<string, number | undefined> = { ...openings };
  const gaps: Record<string, number | undefined> = { plug: openings.plugGapM, ring: openings.ringGapM };
  const links = network.links.map((link): Link => {
    if (link.law === 'orifice') return { ...link, cdAM2: areas[link.id] ?? link.cdAM2 };
    return link.law === 'slot' ? { ...link, gapM: gaps[link.id] ?? link.gapM } : link;
  });
  return { ...network, links };
}
