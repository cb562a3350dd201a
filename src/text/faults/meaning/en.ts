import type { MeaningWords } from './words.ts';

/** What a fault of so much comes to in the job at hand. */
export const englishMeanings: MeaningWords = {
  byCost: {
    firstChamber: 'At the main’s pressure it costs {first} a minute in a proof of the first chamber.',
    secondChamber: 'At the main’s pressure it costs {second} a minute in a proof of the second chamber.',
    bothChambers:
      'At the main’s pressure it costs {first} a minute in a proof of the first chamber, {second} in the second.',
    looseJoint:
      'The joint is made up to {size} at most: that costs {first} a minute in a proof of the first chamber, {second} in the second.',
    plugPasses: 'It lets the first chamber, vented, rise by {rises} a minute.',
    ballPasses: 'It lets the space above the shut ball, vented, rise by {rises} a minute.',
    gasLost: 'At the main’s pressure it passes {lost} of gas an hour.',
    holeLel: 'With the site’s fresh air the hole comes to stand at {lel} of the lower explosive limit.',
    drift: 'A shut chamber reads {pa} otherwise at the main’s pressure once it has taken on the change.',
    hiss: 'Blowing down the service takes {share} times as long as its length says.',
  },
  byFault: {
    bleedBlocked: '{size} of the bleed’s opening is blocked.',
    closingPlugBottoms: 'It meets the bottom {size} past hand-tight.',
    coldRubber: 'Ring and stopper ask for {size} more squeeze.',
    detectorFailsBump: 'It shows {left} of the gas there is.',
    detectorReadsLow: 'It shows {left} of the gas there is.',
    gaugeReadsLow: 'It reads {size} less than there is.',
    gaugeStuck: 'Its pointer stands at {at} whatever there is.',
    gaugeUnfit: 'Its range goes up to {at}.',
    hoseDrifts: '{size} of what leaves the hose comes back to the hole.',
    hoseKinked: '{left} of the hose’s opening is left.',
    keeperStemLong: 'The stem is {size} too long.',
    keeperStemShort: 'The stem is {size} too short.',
    mainFalling: 'The main comes down to {main}.',
    mainOutOfRound: 'The main is {size} out of round.',
    mainRisesAfterStop: 'The main rises to {main}.',
    pipeSprings: 'It springs by {size} when it is parted.',
    plugRounded: 'The wrench slips from {size} on.',
    plugSeized: 'Its bite asks for {size}.',
    pressureAboveRating: 'The main stands at {main}.',
    pressureAboveTag: 'The main stands at {main}.',
    regulatorCreep: 'The main climbs to {main}.',
    scaleUnderChain: 'A leg loses {size} of its travel to the scale.',
    stillAir: '{left} of the site’s fresh air is left.',
    strayVolts: '{size} stand across the cut.',
    teeSeized: 'Its bite asks for {size}.',
    valveStiff: 'Its handle asks for {size}.',
    waterInHole: '{left} of the hole’s air is left.',
  },
};
