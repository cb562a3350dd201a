import type { WordKey } from '../../panel/index.ts';

/** A place of the workplace, as a selector, and what is said of it. */
interface TourStep {
  readonly place: string;
  readonly says: WordKey;
}

/** Seven places, some forty words each: two minutes at reading pace. */
export const tourSteps: readonly TourStep[] = [
  { place: '.clock', says: 'tour.clock' },
  { place: '#rig', says: 'tour.rig' },
  { place: '#hands', says: 'tour.hands' },
  { place: '#instruments', says: 'tour.instruments' },
  { place: '#order', says: 'tour.order' },
  { place: '.said', says: 'tour.said' },
  { place: '.clock', says: 'tour.way' },
];
