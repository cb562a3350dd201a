/** One row of a table of reference cases: what somebody else computed, with its inputs in SI. */
export interface LawCase {
  caseId: string;
  group: string;
  inputs: Readonly<Record<string, unknown>>;
  output: string;
  value: number;
  note: string;
}

const COLUMNS = ['case_id', 'group', 'inputs_json_SI', 'output', 'value'] as const;

/**
 * Reads a comma-separated table with a header naming at least case_id, group, inputs_json_SI, output and value.
 * Throws SyntaxError naming the line where a row cannot be read.
 */
export function parseLawTable(csvText: string): LawCase[] {
  const [header, ...rows] = parseCsv(csvText);
  if (header === undefined) throw new SyntaxError('The table is empty.');
  const at = (name: string): number => header.indexOf(name);
  for (const name of COLUMNS) if (at(name) < 0) throw new SyntaxError(`The table has no column ${name}.`);
  return rows.map((row, index) => {
    const value = Number(row[at('value')]);
    const inputs: unknown = parseInputs(row[at('inputs_json_SI')], index + 2);
    if (!Number.isFinite(value) || row[at('value')] === '') {
      throw new SyntaxError(`Row ${index + 2} has no number under value.`);
    }
    return {
      caseId: row[at('case_id')],
      group: row[at('group')],
      inputs: inputs as Readonly<Record<string, unknown>>,
      output: row[at('output')],
      value,
      note: row[at('note')] ?? '',
    };
  });
}

function parseInputs(text: string | undefined, line: number): unknown {
  try {
    const parsed: unknown = JSON.parse(text ?? '');
    if (typeof parsed === 'object' && parsed !== null) return parsed;
  } catch {
    throw new SyntaxError(`Row ${line} has inputs that are not JSON.`);
  }
  throw new SyntaxError(`Row ${line} has inputs that are not an object.`);
}

/** Fields of a comma-separated text; quotes may hold commas, line ends and doubled quotes. Blank lines are passed over. */
function parseCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let field = '';
  let quoted = false;
  for (let i = 0; i < text.length; i += 1) {
    const char = text[i];
    if (quoted) {
      if (char !== '"') field += char;
      else if (text[i + 1] === '"') {
        field += '"';
        i += 1;
      } else quoted = false;
    } else if (char === '"') quoted = true;
    else if (char === ',') {
      row.push(field);
      field = '';
    } else if (char === '\n') {
      row.push(field);
      if (row.length > 1 || field !== '') rows.push(row);
      row = [];
      field = '';
    } else if (char !== '\r') field += char;
  }
  if (field !== '' || row.length > 0) rows.push([...row, field]);
  return rows;
}
