import { costs, costsIn, critical, harmless, type Expected } from './expected.ts';

/** Every act of a full job that moves no part, left out wherever it comes, written from the trade. */
export const whenNeverDone: Readonly<Record<string, Expected>> = {
  'site.do readOrder': costs('holdPoints', 1, 'what stands there is held against the order'),
  'site.do permit': harmless('the yard has its standing permit; this exercise asks for none'),
  'site.do barricade': harmless('the yard is closed to the public'),
  'site.do callGasControl': costs('holdPoints', 1, 'nobody would know whom to call'),
  'site.do findShutoff': costs('holdPoints', 1, 'a blow could not be shut off'),
  'site.do ignitionCleared': costs('holdPoints', 1, 'a spark needs only the gas'),
  'site.do extinguisher': costs('holdPoints', 1, 'required at the excavation when gas is let go'),
  'site.do ladder': costs('holdPoints', 1, 'the hole is deeper than four feet'),
  'site.do secondPerson': costs('holdPoints', 1, 'one on the rod, one on valve and bleed'),
  'site.do traceAtMain': critical('the wrong service would be cut'),
  'site.do traceAtMeter': critical('the wrong service would be cut'),
  'site.do shutCustomer': critical('the customer would be cut off burning'),
  'site.do tagCustomer': critical('somebody else opens it again'),
  'site.do checkFarFeed': critical('the service may be fed from elsewhere'),
  'site.do measureVolts': harmless(
    'the bond across the cut carries what flows; no hold point asks for the figure',
  ),
  'site.do supportPipe': costs('technique', 0.5, 'the pipe springs at the cut'),
  'site.do bringRig': costs('holdPoints', 1, 'the tee is broken loose and the rig is in the truck'),
  'site.do bringSpares': costs('holdPoints', 1, 'no second plug with the coupling open'),
  'site.do coat': costs('holdPoints', 1, 'bare steel in the ground rusts'),
  'detector.bump': costs('holdPoints', 1, 'an instrument nobody tried may be dead'),
  'detector.read hole': critical('the air was never tested, not even before the saw'),
  'detector.read beside': costs('holdPoints', 1, 'gas tracks through the ground'),
  'gauge.zero main': critical('every later figure hangs on this gauge'),
  'gauge.zero second': critical('two gauges a division apart show nothing'),
  'gauge.zero head': costs('holdPoints', 1, 'the figures written down are not those it shows'),
  'gauge.read main': critical('the pressure was taken from the tag'),
  'gauge.read second': critical('one gauge may be stuck'),
  'gauge.read head': critical('nothing was proved'),
  'look wrap': costs('holdPoints', 1, 'old wrap may be a stop'),
  'look wall': costs('holdPoints', 1, 'chains on thin wall'),
  'look coupling': costs('holdPoints', 1, 'the second seat was never looked at'),
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
  'sealant.apply closingPlug': costs('holdPoints', 1, 'a dry plug weeps'),
  'bond.clamp tee on': critical('stray current sparks at the cut'),
  'bond.clamp service on': critical('stray current sparks at the cut'),
  'bond.clamp tee off': costs('holdPoints', 1, 'the cable stays in the ground'),
  'bond.clamp service off': costs('holdPoints', 1, 'the cable stays in the ground'),
  listen: critical('nobody watched the pilot for its minute'),
  'gaugeRing.try': costs('holdPoints', 1, 'the tee may jam in the saddle'),
  'service.purge': critical('a service full of gas was left in the ground'),
  'sign H1': costs('holdPoints', 1, 'a hold point was passed over'),
  'sign H2': critical('a hold point was passed over'),
  'sign H3': costs('holdPoints', 1, 'a hold point was passed over'),
  'sign H4': critical('a hold point was passed over'),
  'sign H5': costs('holdPoints', 1, 'a hold point was passed over'),
  'sign H6': critical('a hold point was passed over'),
  'sign H7': critical('a hold point was passed over'),
  'sign H8': costs('holdPoints', 1, 'a hold point was passed over'),
  'sign H9': critical('a hold point was passed over'),
  'sign H10': costs('holdPoints', 1, 'a hold point was passed over'),
  'sign H11': critical('a hold point was passed over'),
  'sign H12': costs('holdPoints', 1, 'a hold point was passed over'),
  'sign R1': critical('a hold point was passed over'),
  'sign R2': critical('a hold point was passed over'),
  'sign R3': critical('a hold point was passed over'),
  'sign R4': critical('a hold point was passed over'),
  'sign R5': critical('a hold point was passed over'),
  'sign R6': critical('a hold point was passed over'),
};

/** Not asked for by the first hold point: carried along, or looked over where it is used. */
const carried = ['gaugeRing', 'depthCollar', 'closingPlug-spare', 'valveCap', 'serviceCap', 'closingPlug'];

/**
 * Looking over a piece is one rule for all: those that hold pressure are asked for by the first hold point, others where
 * they are used, and one with something wrong is then the thing nobody noticed.
 */
export function whenUninspected(piece: string, isUsed: boolean): Expected {
  if (!carried.includes(piece))
    return costsIn(['holdPoints', 'kit', 'abnormal'], 0.4, 'all kit is looked over before the first wrench');
  return isUsed && !['gaugeRing', 'depthCollar'].includes(piece)
    ? costsIn(['kit', 'holdPoints'], 0.4, 'used without a look')
    : harmless('it is not put to use, or carries no pressure in this job');
}
