import type { ActionKind, KitKind } from '../../core/rig/index.ts';
import type { WordKey } from '../words/index.ts';
import type { Rows } from './offer.ts';
import { branchRows, plugRows, teeRows } from './parting.ts';
import { bleedRows, chainRows, collarRows, headRows, valveRows } from './rig.ts';
import { keeperBiteRows, riserRows, testSetRows } from './renewal.ts';
import { closingRows, keeperRows, rodRows, stopperRows } from './rod.ts';
import { cleanRows, gaugeRows, leakRows, lookRows, measureRows } from './senses.ts';
import { siteRows, stopRows } from './site.ts';

const none: Rows = () => [];

/** A thing hands work on: its rows of buttons, the kit that belongs to it, and the work that is done there. */
export interface Thing {
  readonly id: string;
  readonly name: WordKey;
  readonly cluster: WordKey;
  readonly rows: Rows;
  readonly kit: readonly KitKind[];
  readonly kinds: readonly ActionKind[];
}

function thing(
  id: string,
  name: WordKey,
  cluster: WordKey,
  rows: Rows,
  kinds: readonly ActionKind[],
  kit: readonly KitKind[] = [],
): Thing {
  return { id, name, cluster, rows, kit, kinds };
}

/** In the order of the list on the screen. */
export const things: readonly Thing[] = [
  thing('kit', 'thing.kit', 'cluster.work', none, ['piece.inspect', 'piece.clean', 'piece.reject']),
  thing('site', 'thing.site', 'cluster.work', siteRows, ['site.do']),
  thing('record', 'thing.record', 'cluster.work', none, ['record.write']),
  thing('stop', 'thing.stop', 'cluster.work', stopRows, ['refer', 'main.isolate', 'leaveHole', 'finish']),
  thing('gauges', 'thing.gauges', 'cluster.senses', gaugeRows, [
    'gauge.zero',
    'gauge.read',
    'detector.bump',
    'detector.read',
  ]),
  thing('look', 'thing.look', 'cluster.senses', lookRows, ['look', 'listen'], ['sightCap']),
  thing('leak', 'thing.leak', 'cluster.senses', leakRows, ['leakFluid.apply']),
  thing('clean', 'thing.clean', 'cluster.senses', cleanRows, ['clean']),
  thing('measure', 'thing.measure', 'cluster.senses', measureRows, ['measure', 'mark']),
  thing('seat', 'thing.seat', 'cluster.rig', none, [], ['seatRing', 'saddle', 'cradleBlock']),
  thing(
    'chains',
    'thing.chains',
    'cluster.rig',
    chainRows,
    ['chain.hook', 'chain.tap', 'tensioner.turn'],
    ['chain'],
  ),
  thing(
    'valve',
    'thing.valve',
    'cluster.rig',
    valveRows,
    ['valve.turn'],
    ['isolationValve', 'lowerSpool', 'upperSpool', 'valveCap'],
  ),
  thing('head', 'thing.head', 'cluster.rig', headRows, ['pump.stroke', 'vent.turn'], ['testHead']),
  thing(
    'rod',
    'thing.rod',
    'cluster.rig',
    rodRows,
    ['rod.hold', 'rod.move', 'rod.turn', 'rod.fit', 'rod.load'],
    ['rodBarrel', 'socket', 'stopperHolder', 'magnet'],
  ),
  thing('bleed', 'thing.bleed', 'cluster.rig', bleedRows, ['bleed.turn', 'bleed.clear', 'hose.lead']),
  thing('plug', 'thing.plug', 'cluster.bore', plugRows, ['plug.turn', 'oil.apply']),
  thing(
    'stopper',
    'thing.stopper',
    'cluster.bore',
    stopperRows,
    ['innerRod.turn', 'collar.set'],
    ['boreStopper'],
  ),
  thing(
    'keeper',
    'thing.keeper',
    'cluster.bore',
    (grip) => [...keeperRows(grip), ...keeperBiteRows(grip)],
    ['keeper.pull', 'keeper.turn'],
    ['keeperPlug'],
  ),
  thing(
    'branch',
    'thing.branch',
    'cluster.bore',
    branchRows,
    ['bond.clamp', 'branch.cut', 'service.purge'],
    ['serviceCap'],
  ),
  thing(
    'tee',
    'thing.tee',
    'cluster.bore',
    teeRows,
    ['tee.trim', 'gaugeRing.try', 'tee.turn'],
    ['gaugeRing'],
  ),
  thing(
    'collar',
    'thing.collar',
    'cluster.bore',
    collarRows,
    ['collarBolt.turn'],
    ['cupGasket', 'splitCollar'],
  ),
  thing(
    'closing',
    'thing.closing',
    'cluster.bore',
    closingRows,
    ['sealant.apply'],
    ['closingPlug', 'renewalTee', 'newTopPlug', 'tieIn'],
  ),
  thing(
    'testSet',
    'thing.testSet',
    'cluster.bore',
    testSetRows,
    ['testSet.join', 'testSet.pump', 'testSet.vent', 'temperature.read'],
    ['testSet'],
  ),
  thing('riser', 'thing.riser', 'cluster.bore', riserRows, ['riser.turn', 'riser.read'], ['purgeRiser']),
];
