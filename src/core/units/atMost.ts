import * as v from 'valibot';

/**
 * A text of so many characters at most, counted as JSON Schema counts them: a character beyond the first plane is one
 * (RFC 8259's), where valibot alone counts it twice.
 */
export function atMost(most: number): v.MaxLengthAction<string, number, undefined> {
  const action = v.maxLength<string, number>(most);
  const counted: typeof action = {
    ...action,
    '~run': (dataset, config) =>
      dataset.typed && [...dataset.value].length <= most ? dataset : action['~run'](dataset, config),
  };
  return counted;
}
