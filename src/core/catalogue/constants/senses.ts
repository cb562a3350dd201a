import { assumed, published } from './constant.ts';

/** What instruments, ears and rules tell. */
export const senseConstants = {
  gaugeRangePa: assumed([689475.7, 'Pa', 413685, 689476], 'test gauge range, 100 psi'),
  gaugeDivisionPa: assumed([6894.757, 'Pa', 3447, 13790], 'one division of the test gauge, 1 psi'),
  gaugeReadPa: assumed([1723.69, 'Pa', 862, 3447], 'what an eye tells apart on it, a quarter psi'),
  gaugeClassFraction: assumed([0.01, '-', 0.005, 0.02], 'accuracy class, share of range'),
  manometerRangePa: assumed([14945, 'Pa', 7473, 22418], 'water column of the manometer, 60 in'),
  manometerReadPa: assumed(
    [24.9, 'Pa', 12.5, 62],
    'what an eye tells apart on it, a tenth of an inch of water',
  ),
  detectorLagS: assumed([8, 's', 5, 15], 'time constant of the gas detector'),
  detectorStepLel: assumed([0.01, '-', 0.01, 0.01], 'least step of the detector, 1 % LEL'),
  alarmLowLel: published(
    [0.1, '-', 0.1, 0.2],
    'usual first alarm, detector manuals; 29 CFR 1910.146',
    'first alarm',
  ),
  alarmHighLel: published([0.2, '-', 0.2, 0.5], '29 CFR 1926.651(g): over 20 % is hazardous', 'evacuate'),
  oxygenLowFraction: published([0.195, '-', 0.195, 0.195], '29 CFR 1926.651(g)', 'least oxygen'),
  airOxygenFraction: published([0.209, '-', 0.209, 0.2095], 'any handbook', 'oxygen in fresh air'),
  streetNoiseDb: assumed([45, 'dB', 35, 60], 'sound that a leak must exceed to be heard'),
  earDistanceM: assumed([0.7, 'm', 0.5, 1], 'ear to leak'),
  acousticEfficiency: assumed(
    [1e-4, '-', 3e-5, 3e-4],
    'sound power over jet power at Mach 1, falls as Mach^5',
  ),
  jetStrouhal: assumed([0.2, '-', 0.15, 0.3], 'peak frequency times diameter over speed of sound'),
  earBandHz: assumed([12000, 'Hz', 10000, 16000], 'highest frequency that counts as heard'),
  jetReachFactor: assumed(
    [5, '-', 4, 6],
    'free-jet decay: distance over diameter at which fraction is 1 over this',
  ),
  settleS: assumed([60, 's', 30, 120], 'settling time after pumping'),
  pumpWarmingK: assumed([5, 'K', 2, 10], 'how much warmer freshly pumped air may be'),
} as const;
