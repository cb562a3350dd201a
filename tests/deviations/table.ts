import type { Heading } from '../../src/core/scenario/index.ts';

/** What leaving an act out must cost at least, and why; written from the trade, not from the judge. */
export type Expected =
  | { readonly heading: Heading; readonly least: number; readonly critical?: boolean; readonly why: string }
  | { readonly harmless: string };

const costs = (heading: Heading, least: number, why: string): Expected => ({ heading, least, why });
const critical = (why: string): Expected => ({ heading: 'holdPoints', least: 2, critical: true, why });
const harmless = (why: string): Expected => ({ harmless: why });

/** Every act of a full job that moves no part, left out wherever it comes. */
export const whenLeftOut: Readonly<Record<string, Expected>> = {
  'site.do readOrder': harmless('the order hangs on the board; no hold point asks for it to be read aloud'),
  'site.do permit': harmless('the yard has its standing permit; this exercise asks for none'),
  'site.do barricade': harmless('the yard is closed to the public'),
  'site.do callGasControl': costs('holdPoints', 2, 'nobody would know whom to call'),
  'site.do findShutoff': costs('holdPoints', 2, 'a blow could not be shut off'),
  'site.do ignitionCleared': costs('holdPoints', 2, 'a spark needs only the gas'),
  'site.do extinguisher': costs('holdPoints', 2, 'required at the excavation when gas is let go'),
  'site.do ladder': costs('holdPoints', 2, 'the hole is deeper than four feet'),
  'site.do secondPerson': costs('holdPoints', 2, 'one on the rod, one on valve and bleed'),
  'site.do traceAtMain': critical('the wrong service would be cut'),
  'site.do traceAtMeter': critical('the wrong service would be cut'),
  'site.do shutCustomer': critical('the customer would be cut off burning'),
  'site.do tagCustomer': critical('somebody else opens it again'),
  'site.do checkFarFeed': critical('the service may be fed from elsewhere'),
  'site.do supportPipe': costs('technique', 0.5, 'the pipe springs at the cut'),
  'site.do bringRig': costs('holdPoints', 1, 'the tee is broken loose and the rig is in the truck'),
  'site.do bringSpares': costs('holdPoints', 2, 'no second plug with the coupling open'),
  'site.do coat': costs('holdPoints', 2, 'bare steel in the ground rusts'),
  'site.do cover': harmless('covering is what the last hold point guards, not what it asks'),
  'detector.bump': costs('holdPoints', 2, 'an instrument nobody tried may be dead'),
  'detector.read hole': critical('the air was never tested, not even before the saw'),
  'detector.read beside': costs('holdPoints', 2, 'gas tracks through the ground'),
  'gauge.zero main': critical('every later figure hangs on this gauge'),
  'gauge.zero second': harmless('the first gauge is the zeroed one; the second only agrees'),
  'gauge.zero head': harmless('the proof rests on differences of one gauge; its zero falls out of them'),
  'gauge.read main': critical('the pressure was taken from the tag'),
  'gauge.read second': critical('one gauge may be stuck'),
  'gauge.read head': critical('nothing was proved'),
  'look wrap': costs('holdPoints', 2, 'old wrap may be a stop'),
  'look wall': costs('holdPoints', 2, 'chains on thin wall'),
  'look coupling': costs('holdPoints', 2, 'the second seat was never looked at'),
  'look boss': critical('the first seat was never looked at'),
  'look downBore': critical('stopper and closing plug were never seen'),
  'look chains': harmless('leak fluid and the gauge say the same'),
  'look gasketSeat': costs('holdPoints', 1, 'a gasket on scale leaks with the tee out'),
  'measure stackHeight': harmless('three lengths and the collar of the last job still give the travel'),
  'measure seatToBoss': harmless('three lengths and the seat ring’s own thickness give the travel'),
  'measure bossToPort': costs('technique', 1, 'the hub outside is lower than the port: a known trap'),
  'measure tipOffset': harmless('the tip’s offset is stamped on it'),
  'mark plug': costs('technique', 0.25, 'nobody sees it turn'),
  'mark tee': harmless('the keeper’s mark shows the same turn'),
  'mark keeper': critical('a keeper that moves is not seen'),
  'mark portLine': harmless('the measure is what counts'),
  'leakFluid.apply plug': costs('technique', 0.25, 'a cracked plug that weeps hides in the proof'),
  'leakFluid.apply seat': critical('a gauge misses a leak ten thousand times what fluid shows'),
  'leakFluid.apply valveJoint': critical('a gauge misses a leak ten thousand times what fluid shows'),
  'leakFluid.apply topJoint': critical('a gauge misses a leak ten thousand times what fluid shows'),
  'leakFluid.apply spoolJoint': critical('a gauge misses a leak ten thousand times what fluid shows'),
  'leakFluid.apply teeThread': costs('technique', 0.5, 'the broken thread may weep under the gasket'),
  'leakFluid.apply weld': critical('the weld stays in the ground'),
  'leakFluid.apply keeper': critical('the pocket behind it refills unheard'),
  'leakFluid.apply closingPlug': critical('each re-made joint is tested at operating pressure'),
  'leakFluid.apply cutEnd': critical('the dead end must be tight'),
  'sealant.apply closingPlug': costs('holdPoints', 2, 'a dry plug weeps'),
  'bond.clamp tee on': critical('stray current sparks at the cut'),
  'bond.clamp service on': critical('stray current sparks at the cut'),
  'bond.clamp tee off': costs('holdPoints', 2, 'the cable stays in the ground'),
  'bond.clamp service off': costs('holdPoints', 2, 'the cable stays in the ground'),
  listen: harmless('the detector stood by the pilot opening for the same minute'),
  'gaugeRing.try': costs('holdPoints', 1, 'the tee may jam in the saddle'),
  'service.purge': critical('a service full of gas was left in the ground'),
  'record.write mainPressure': costs('holdPoints', 2, 'the record is part of the job'),
  'record.write proof1': costs('holdPoints', 2, 'the record is part of the job'),
  'record.write proof2': costs('holdPoints', 2, 'the record is part of the job'),
  'record.write leakTest': costs('holdPoints', 2, 'the record is part of the job'),
  'record.write disconnected': costs('holdPoints', 2, 'the record is part of the job'),
  'record.write purged': costs('holdPoints', 2, 'the record is part of the job'),
  'record.write sealed': costs('holdPoints', 2, 'the record is part of the job'),
  'record.write testMedium': costs('holdPoints', 2, 'the record is part of the job'),
  'record.write crew': costs('holdPoints', 2, 'the record is part of the job'),
  'sign H1': costs('holdPoints', 2, 'a hold point was passed over'),
  'sign H2': critical('a hold point was passed over'),
  'sign H3': costs('holdPoints', 1, 'a hold point was passed over'),
  'sign H4': critical('a hold point was passed over'),
  'sign H5': costs('holdPoints', 2, 'a hold point was passed over'),
  'sign H6': critical('a hold point was passed over'),
  'sign H7': critical('a hold point was passed over'),
  'sign H8': costs('holdPoints', 1, 'a hold point was passed over'),
  'sign H9': critical('a hold point was passed over'),
  'sign H10': costs('holdPoints', 2, 'a hold point was passed over'),
  'sign H11': critical('a hold point was passed over'),
  'sign H12': costs('holdPoints', 2, 'a hold point was passed over'),
};

/** Looking over a piece is one rule for all pieces: those that hold pressure are asked for by the first hold point. */
export function whenUninspected(piece: string): Expected {
  const small = ['valveCap', 'gaugeRing', 'serviceCap', 'depthCollar', 'closingPlug-1-spare']; // the closing plug has a spare that was looked over
  if (['valveCap', 'serviceCap', 'closingPlug'].includes(piece))
    return costs('kit', 0.4, 'used without a look');
  return small.includes(piece)
    ? harmless('it carries no pressure in this job')
    : costs('holdPoints', 2, 'all kit is looked over before the first wrench');
}
