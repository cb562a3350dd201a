/** Where the command's words go. Tests listen here; the real command writes to the process. */
export interface CommandIo {
  /** Results, one text without a line end. */
  readonly out: (text: string) => void;
  /** Progress and complaints. */
  readonly err: (text: string) => void;
  /** File that a worker thread can be started from, or null where none can. */
  readonly workerFile: string | null;
}

/** Good, judged bad, unusable input. */
export const exitCodes = { good: 0, bad: 1, unusable: 2 } as const;
export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

/** Input that cannot be used: one sentence, where it is known with its place. Ends the command with code 2. */
export class Unusable extends Error {}

/** What went wrong, as one sentence of a person. */
export function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
