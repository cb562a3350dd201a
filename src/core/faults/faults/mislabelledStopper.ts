import { mislabelled } from '../mislabelled.ts';

/** The stamp of a bore stopper lies: it is too slim for the bore or will not go in. */
export const mislabelledStopper = mislabelled('mislabelledStopper', 'boreStopper', ['stopFails']);
