import type { Readings, RunState } from '../../core/run/index.ts';
import type { Speech } from '../catalogue.ts';
import { say } from '../say.ts';
import { finePercent, percent } from '../units.ts';
import { words } from '../words.ts';

/** Gauges, detector, hose, customer, bond. */
export function siteLines({ rig }: RunState, readings: Readings, { units }: Speech): string[] {
  const { site } = rig;
  const zero = (checked: boolean) => (checked ? '' : say('twin.zeroUnchecked'));
  const word = (clamped: boolean) => say(clamped ? 'twin.on' : 'twin.off');
  const lines = [
    say('twin.mainGauge', {
      reading: units.pressure(readings.mainGaugePa),
      zero: zero(site.zeroed.main === true),
    }),
    say('twin.secondGauge', {
      reading: units.pressure(readings.secondGaugePa),
      zero: zero(site.zeroed.second === true),
    }),
    say('twin.detector', {
      where: words().detectorPlaces[site.detectorAt],
      lel: percent(readings.lelShare),
      oxygen: finePercent(readings.oxygenShare),
      bumped: site.detectorBumped ? '' : say('twin.notBumped'),
    }),
  ];
  if (readings.overRange) lines.push(say('twin.overRange'));
  if (readings.alarm > 0) lines.push(say(readings.alarm === 1 ? 'twin.alarmLow' : 'twin.alarmHigh'));
  const hoses = { none: 'twin.hoseNone', inHole: 'twin.hoseInHole', away: 'twin.hoseAway' } as const;
  lines.push(say(hoses[rig.hose]));
  const tagged = site.done.tagCustomer === undefined ? '' : say('twin.tagged');
  lines.push(site.curbOpen ? say('twin.customerOpen') : say('twin.customerShut', { tagged }));
  if (site.bonded.tee || site.bonded.service)
    lines.push(say('twin.bonded', { tee: word(site.bonded.tee), service: word(site.bonded.service) }));
  if (!site.inHole) lines.push(say('twin.emptyHole'));
  if (site.mainIsolated) lines.push(say('twin.isolated'));
  return lines;
}
