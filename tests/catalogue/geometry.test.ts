import { describe, expect, it } from 'vitest';
import {
  ballElevations,
  BALL_CLEARANCE_M,
  boreVolumeM3,
  cradleSizes,
  crestDiameterM,
  mainSizes,
  pieceKinds,
  pieces,
  rigJoint,
  rodRange,
  rodTravels,
  stackGeometry,
  stackUp,
  taperThreads,
  teeSizes,
} from '../../src/core/catalogue/index.ts';

const job = (teeSize: (typeof teeSizes)[number]) => ({ mainNps: '4' as const, teeSize });

describe('the kit board', () => {
  it('has an entry for every kind of piece, with a source for every dimension', () => {
    for (const kind of pieceKinds) {
      const entry = pieces[kind];
      expect(entry.kind).toBe(kind);
      for (const size of entry.sizes) {
        const dims = (entry.dims as (s: string) => Record<string, number>)(size);
        for (const [name, value] of Object.entries(dims)) {
          expect(value, `${kind}.${name}`).toBeGreaterThan(0);
          expect(Number.isFinite(value), `${kind}.${name}`).toBe(true);
          const source = (entry.sources as Record<string, string>)[name];
          expect(source, `${kind}.${name}`).toMatch(/^(published: .+|from memory: .+|computed: .+|assumed)$/);
        }
      }
    }
  });

  it('has cradle blocks for the small mains only', () => {
    expect(cradleSizes).toEqual(['1-1/4', '1-1/2', '2', '3']);
  });
});

describe('what must pass the 76.2 mm bore', () => {
  it.each(teeSizes)('the NPS %s tee only once trimmed, and then through the gauge ring', (teeSize) => {
    const { sweptM } = stackGeometry(job(teeSize));
    const ring = pieces.gaugeRing.dims().idM;
    expect(sweptM.untrimmed).toBeGreaterThan(ring);
    expect(sweptM.sawn).toBeLessThan(ring);
    expect(sweptM.dressed).toBeLessThan(sweptM.sawn);
  });

  it('swept circles are those of the parameters: 76, 88, 104 whole; 48, 58, 72 sawn; 37, 45, 55 dressed (±0.6 mm)', () => {
    // From B16.3 dimensions, from memory; body assumed.
    const told = { '3/4': [76, 48, 37], '1': [88, 58, 45], '1-1/4': [104, 72, 55] };
    for (const teeSize of teeSizes) {
      const { untrimmed, sawn, dressed } = stackGeometry(job(teeSize)).sweptM;
      [untrimmed, sawn, dressed].forEach((d, i) => {
        expect(Math.abs(d * 1000 - told[teeSize][i])).toBeLessThan(0.6);
      });
    }
  });

  it.each(teeSizes)('every plug, stopper, keeper and socket of NPS %s', (teeSize) => {
    const bore = rigJoint.boreM;
    const across = pieces.topPlug.dims(teeSize).acrossFlatsM;
    expect(across * Math.SQRT2).toBeLessThan(bore);
    expect(pieces.socket.dims(teeSize).odM).toBeLessThan(bore - 0.01);
    expect(pieces.socket.dims(teeSize).odM).toBeGreaterThan(pieces.socket.dims(teeSize).squareM * Math.SQRT2);
    expect(pieces.boreStopper.dims(teeSize).freeOdM).toBeLessThan(bore);
  });

  it.each(teeSizes)(
    'an unsqueezed NPS %s stopper goes through the top thread and into the lower bore',
    (teeSize) => {
      const stopper = pieces.boreStopper.dims(teeSize);
      expect(stopper.freeOdM).toBeLessThan(crestDiameterM(teeSize, taperThreads[teeSize].l2M));
      expect(stopper.freeOdM).toBeLessThan(stopper.boreM);
      expect(stopper.freeOdM).toBeGreaterThan(stopper.boreM - 0.003);
    },
  );
});

describe('elevations along the axis of the coupling', () => {
  it.each(teeSizes)('stand in order for an NPS %s tee', (teeSize) => {
    const g = stackGeometry(job(teeSize));
    const upward = [
      0,
      g.teeMaleEndZM,
      g.stopperBottomZM,
      g.stopperWasherZM,
      g.portUndersideZM,
      g.portAxisZM,
      g.bossZM,
      g.plugShoulderZM,
      g.plugTopZM,
    ];
    for (let i = 1; i < upward.length; i++) expect(upward[i]).toBeGreaterThan(upward[i - 1]);
    expect(g.hubUndersideZM).toBeLessThan(g.portUndersideZM);
    expect(g.secondSeatZM).toBeLessThan(g.couplingTopZM);
  });

  it.each(teeSizes)('the NPS %s seat ring seals on the boss, outside the plug', (teeSize) => {
    const ring = pieces.seatRing.dims(teeSize);
    expect(ring.rubberOdM).toBeLessThan(pieces.serviceTee.dims(teeSize).bandOdM);
    expect(ring.rubberIdM).toBeGreaterThan(taperThreads[teeSize].e1M);
    expect(ring.plateOdM).toBeLessThan(pieces.saddle.dims().recessOdM);
    expect(ring.plateThickM).toBe(pieces.saddle.dims().recessDepthM);
  });

  it('the NPS 1 ring has 531 mm² of rubber (parameters, assumed)', () => {
    const { rubberIdM, rubberOdM } = pieces.seatRing.dims('1');
    const area = (Math.PI / 4) * (rubberOdM ** 2 - rubberIdM ** 2);
    expect(Math.abs(area - 531e-6)).toBeLessThan(1e-6);
  });

  it.each(teeSizes)('the trimmed NPS %s tee stands inside the saddle on its second seat', (teeSize) => {
    const g = stackGeometry(job(teeSize));
    const [saddle, spool] = stackUp(g.secondSeatZM, ['saddle', 'lowerSpool']);
    expect(g.plugTopZM).toBeLessThan(spool.topZM);
    expect(g.bossZM).toBeGreaterThan(saddle.seatZM);
  });

  it('leaves 1–5 mm between keeper stem and stopper, by all sizes', () => {
    for (const teeSize of teeSizes) {
      const g = stackGeometry(job(teeSize));
      const keeper = pieces.keeperPlug.dims(teeSize);
      const keeperBottom = g.bossZM - taperThreads[teeSize].madeUpM - keeper.stemM;
      const gap = keeperBottom - (g.stopperWasherZM + pieces.boreStopper.dims(teeSize).stemM);
      expect(gap).toBeGreaterThanOrEqual(0.001);
      expect(gap).toBeLessThanOrEqual(0.005);
    }
  });
});

describe('gas volumes', () => {
  it('are the bore times the length where a piece is a plain bore, within 2 %', () => {
    const near = (a: number, b: number) => expect(Math.abs(a / b - 1)).toBeLessThan(0.02);
    near(pieces.lowerSpool.netVolumeM3, 0.456e-3);
    near(pieces.upperSpool.netVolumeM3, 0.684e-3);
    const valve = pieces.isolationValve.dims();
    near(boreVolumeM3(valve.ballBoreLengthM), valve.ballM3);
    near(boreVolumeM3((valve.heightM - valve.ballBoreLengthM) / 2), valve.belowBallM3);
    near(boreVolumeM3(pieces.sightCap.dims().cavityM), pieces.sightCap.netVolumeM3);
    near(boreVolumeM3(pieces.testHead.dims().cavityM), pieces.testHead.netVolumeM3);
    const rodM3 = ((Math.PI * pieces.rod.dims().odM ** 2) / 4) * pieces.rodBarrel.dims().cavityM;
    near(boreVolumeM3(pieces.rodBarrel.dims().cavityM) - rodM3, pieces.rodBarrel.netVolumeM3);
    const saddle = pieces.saddle.dims();
    const plug = pieces.topPlug.dims('1');
    const g = stackGeometry(job('1'));
    const headM3 = plug.acrossFlatsM ** 2 * (g.plugTopZM - g.firstSeatZM);
    near(boreVolumeM3(saddle.heightM - saddle.recessDepthM) - headM3, 0.408e-3);
    near(saddle.firstNetM3, 0.4e-3);
  });
});

describe('travel of the rod', () => {
  it.each(teeSizes)('one stroke serves all work on an NPS %s tee, and leaves the ball free', (teeSize) => {
    const g = stackGeometry(job(teeSize));
    const socket = pieces.socket.dims(teeSize).lengthM;
    const holder = pieces.stopperHolder.dims().lengthM;
    const hang = pieces.topPlug.dims(teeSize).threadLengthM;

    const first = stackUp(g.firstSeatZM, ['saddle', 'isolationValve', 'rodBarrel']);
    const ball = ballElevations(first[1].seatZM);
    const up = rodRange(first[2].seatZM);
    expect(up.upZM - socket - hang).toBeGreaterThanOrEqual(ball.clearZM);
    expect(up.upZM - holder - pieces.boreStopper.dims(teeSize).belowTopM).toBeGreaterThanOrEqual(
      ball.clearZM,
    );
    expect(up.downZM - socket).toBeLessThanOrEqual(g.plugShoulderZM);
    expect(up.downZM - holder).toBeLessThanOrEqual(g.stopperWasherZM);

    const second = stackUp(g.secondSeatZM, [
      'saddle',
      'lowerSpool',
      'isolationValve',
      'upperSpool',
      'rodBarrel',
    ]);
    const ball2 = ballElevations(second[2].seatZM);
    const tall = rodRange(second[4].seatZM);
    const teeHangs = g.plugShoulderZM - g.teeMaleEndZM;
    expect(tall.downZM - socket).toBeLessThanOrEqual(g.plugShoulderZM);
    expect(tall.upZM - socket - teeHangs).toBeGreaterThanOrEqual(ball2.clearZM);

    // The upper spool leaves with the tee in it; the closing plug goes down from a barrel standing on the valve.
    const low = rodRange(second[3].seatZM);
    expect(low.downZM - socket).toBeLessThanOrEqual(g.closingShoulderZM);
    expect(low.upZM - socket - hang).toBeGreaterThanOrEqual(ball2.clearZM);
    // Through the upper spool the stroke would be too short for it.
    expect(tall.downZM - socket).toBeGreaterThan(g.closingShoulderZM);
  });

  it('is 271, 342, 359 and 359 mm for plug, stopper, tee and closing plug of NPS 1 (±1 mm, our own design)', () => {
    const t = rodTravels(job('1'));
    const mm = [t.plugM, t.stopperM, t.teeM, t.closingPlugM].map((x) => x * 1000);
    [271, 342, 359, 359].forEach((told, i) => expect(Math.abs(mm[i] - told)).toBeLessThan(1));
    for (const m of mm) expect(m).toBeLessThanOrEqual(pieces.rod.dims().strokeM * 1000);
  });

  it('does not depend on the size of the main, and the ball keeps its clearance', () => {
    for (const mainNps of mainSizes)
      expect(rodTravels({ mainNps, teeSize: '1' })).toEqual(rodTravels(job('1')));
    const b = ballElevations(0.2);
    expect(b.clearZM - b.poleZM).toBeCloseTo(BALL_CLEARANCE_M, 12);
    expect(b.poleZM - b.centreZM).toBeGreaterThan(rigJoint.boreM / 2);
  });
});

describe('where height is needed', () => {
  it.each(teeSizes)(
    'the NPS %s keeper, with its stem, clears the ball only with the upper spool on',
    (teeSize) => {
      const g = stackGeometry(job(teeSize));
      const keeper = pieces.keeperPlug.dims(teeSize);
      const hang = keeper.threadLengthM + keeper.stemM + pieces.socket.dims(teeSize).lengthM;
      const low = stackUp(g.firstSeatZM, ['saddle', 'isolationValve', 'rodBarrel']);
      const tall = stackUp(g.firstSeatZM, ['saddle', 'isolationValve', 'upperSpool', 'rodBarrel']);
      const ball = ballElevations(low[1].seatZM);
      expect(rodRange(low[2].seatZM).upZM - hang).toBeLessThan(ball.clearZM);
      expect(rodRange(tall[3].seatZM).upZM - hang).toBeGreaterThanOrEqual(ball.clearZM);
      expect(rodRange(tall[3].seatZM).downZM - pieces.socket.dims(teeSize).lengthM).toBeLessThanOrEqual(
        g.plugShoulderZM,
      );
    },
  );
});
