// Asked before anything else, because an old Node fails later with a message nobody understands.
const oldestMajor = 20;

/**
 * @param {string} version as in process.versions.node
 * @returns {string | undefined} one sentence when this Node is too old
 */
export function refuseOldNode(version) {
  const major = Number.parseInt(version, 10);
  if (major >= oldestMajor) return undefined;
  return `Stillmain needs Node ${oldestMajor} or newer; this is Node ${version}. Install a newer Node and call it again.`;
}

export function requireNode() {
  const refusal = refuseOldNode(process.versions.node);
  if (refusal === undefined) return;
  console.error(refusal);
  process.exit(1);
}
