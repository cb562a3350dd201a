import { mislabelled } from '../mislabelled.ts';

/** The stamp of a seat ring lies: its rubber stands beside the boss. */
export const mislabelledSeatRing = mislabelled('mislabelledSeatRing', 'seatRing', ['proofFails']);
