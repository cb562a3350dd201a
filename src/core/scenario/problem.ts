import type * as v from 'valibot';

/** One thing wrong with a document: where (`job.kit[3].stamped`, empty for the whole of it) and a plain sentence. */
export interface Problem {
  readonly where: string;
  readonly says: string;
}

/** The place of an issue in the document, as a person would point at it. */
export function whereOf(issue: v.BaseIssue<unknown>): string {
  let where = '';
  for (const step of issue.path ?? []) {
    if (typeof step.key === 'number') where += `[${step.key}]`;
    else where += where === '' ? String(step.key) : `.${String(step.key)}`;
  }
  return where;
}

/** A valibot issue as a plain sentence. */
export function problemOf(issue: v.BaseIssue<unknown>): Problem {
  const where = whereOf(issue);
  if (issue.type === 'strict_object') {
    const missing = issue.received === 'undefined';
    if (missing) return { where, says: 'This entry is missing.' };
    if (issue.expected === 'never') return { where, says: 'This entry is not known here.' };
    return { where, says: `A set of named entries belongs here, not ${received(issue)}.` };
  }
  if (issue.received === 'undefined') return { where, says: 'This entry is missing.' };
  return { where, says: sentenceOf(issue) };
}

function sentenceOf(issue: v.BaseIssue<unknown>): string {
  const bound = 'requirement' in issue ? String(issue.requirement) : '';
  switch (issue.type) {
    case 'number':
      return `A number belongs here, not ${received(issue)}.`;
    case 'finite':
      return 'The number must be finite.';
    case 'integer':
      return `A whole number belongs here, not ${received(issue)}.`;
    case 'string':
      return `A text belongs here, not ${received(issue)}.`;
    case 'boolean':
      return `Either true or false belongs here, not ${received(issue)}.`;
    case 'array':
    case 'tuple':
    case 'strict_tuple':
      return `A list belongs here, not ${received(issue)}.`;
    case 'min_value':
      return `The number must be at least ${bound}; it is ${received(issue)}.`;
    case 'max_value':
      return `The number must be at most ${bound}; it is ${received(issue)}.`;
    case 'min_length':
      return `At least ${bound} must stand here.`;
    case 'max_length':
      return `No more than ${bound} may stand here.`;
    case 'regex':
      return `The text ${received(issue)} has a form that is not allowed here.`;
    case 'picklist':
    case 'literal':
    case 'variant':
      return `One of ${issue.expected ?? 'the known words'} belongs here, not ${received(issue)}.`;
    default:
      return `${issue.expected ?? 'Something else'} belongs here, not ${received(issue)}.`;
  }
}

function received(issue: v.BaseIssue<unknown>): string {
  return issue.received.length > 60 ? `${issue.received.slice(0, 57)}…` : issue.received;
}
