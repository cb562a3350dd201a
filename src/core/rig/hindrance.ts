/** Why a hand could not do it. `ended` and `busy` are the run's; the rest are the rig's. */
export const hindrances = [
  'ended', 'busy', 'notOnBoard', 'notFitted', 'alreadyFitted', 'occupied', 'nothingBelow', 'covered', 'doesNotFit',
  'ballInTheWay', 'pieceInBall', 'atStop', 'atCollar', 'needsTestHead', 'needsBleed', 'needsBarrel', 'barrelOn',
  'needsTip', 'needsLoad', 'wrongTip', 'notEngaged', 'notReached', 'tooTight', 'chained', 'notHooked', 'noChains',
  'rigOver', 'outOfReach', 'notCut', 'alreadyDone', 'heldByThread', 'noHeadroom', 'outOfHole', 'notPlaced', 'rejected',
  'ratchetEnd', 'alreadyThere', 'nothingToRead',
] as const; // prettier-ignore
export type Hindrance = (typeof hindrances)[number];
