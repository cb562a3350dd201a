/** Hands the person a file. */
export function saveFile(name: string, text: string, mediaType = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type: mediaType }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** A file name that says which run it holds: scenario and wall-clock time, letters that every system takes. */
export function nameFile(scenarioId: string, begunAt: string): string {
  return `${scenarioId}.${begunAt.slice(0, 19).replace(/[:T]/g, '-')}.run.json`;
}
