import { mislabelled } from '../mislabelled.ts';

/** The stamp of a socket lies: it does not take the square head. */
export const mislabelledSocket = mislabelled('mislabelledSocket', 'socket', ['other']);
