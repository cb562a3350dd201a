/** Why a file is refused. Worded in `text/review`. */
export const badPlaceWhys = [
  'tooLarge',
  'notUtf8',
  'tooDeep',
  'notJson',
  'notCanonical',
  'notARun',
  'badEntry',
  'chainBroken',
  'impossible',
  'otherEnd',
] as const;
export type BadPlaceWhy = (typeof badPlaceWhys)[number];

/** The first place at which a file cannot be believed. */
export interface BadPlace {
  readonly why: BadPlaceWhy;
  /** Place in the document, as `entries[7].action.angleRad` or `scenario`; empty where only a byte is known. */
  readonly where: string;
  /** Entry, counted from 0, or null where it is not an entry that is bad. */
  readonly entry: number | null;
  /** Byte of the file, counted from 0, or null where the place is known by name. */
  readonly byte: number | null;
  /** What the reader of the format says of it, in English; empty where `why` says all. */
  readonly says: string;
}
