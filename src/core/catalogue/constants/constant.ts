/** Where a number comes from. A number of our own says the bare word. */
export type ConstantSource =
  `published: ${string}` | `from memory: ${string}` | `computed: ${string}` | 'assumed';

/** One number of the model, in SI, with the range it may fairly have and where it comes from. */
export interface Constant {
  readonly value: number;
  /** SI unit, '-' for a pure number. */
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  readonly source: ConstantSource;
  /** What the number is, in one line. */
  readonly says: string;
}

type Figures = readonly [value: number, unit: string, low: number, high: number];

/** A number of our own design or field judgement. */
export function assumed([value, unit, low, high]: Figures, says: string): Constant {
  return { value, unit, low, high, source: 'assumed', says };
}

/** A number somebody published; `where` names the document. */
export function published([value, unit, low, high]: Figures, where: string, says: string): Constant {
  return { value, unit, low, high, source: `published: ${where}`, says };
}

/** A published number nobody has opened the document for yet. */
export function fromMemory([value, unit, low, high]: Figures, where: string, says: string): Constant {
  return { value, unit, low, high, source: `from memory: ${where}`, says };
}

/** A number that follows from others by plain arithmetic. */
export function computed([value, unit, low, high]: Figures, how: string, says: string): Constant {
  return { value, unit, low, high, source: `computed: ${how}`, says };
}
