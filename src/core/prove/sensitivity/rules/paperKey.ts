/** Beginnings of keys of acts that move neither gas nor part: they find something out, mark it, or write it down. */
const paper: readonly string[] = [
  'site.do ', 'detector.', 'gauge.', 'look ', 'listen', 'measure ', 'mark ', 'leakFluid.apply ', 'piece.inspect ',
  'piece.reject ', 'sealant.apply ', 'record.write ', 'bond.clamp ', 'gaugeRing.try', 'service.purge', 'temperature.read',
  'riser.read',
]; // prettier-ignore

/** Whether acts of a key move neither gas nor part. */
export function isPaperKey(key: string): boolean {
  return paper.some((beginning) => key.startsWith(beginning));
}
