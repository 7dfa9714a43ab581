import { driverFromTable } from '../../../functions/driver/driver.ts';
import type { CellDatum } from '../../../functions/define.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { readContent } from '../../formula/content.ts';
import { speak } from '../../units/show.ts';
import type { Candidate } from './types.ts';

/** The driver that a sheet would make of a candidate's rows, or why there is none. */
export function driverOfCandidate({ name, rows }: Candidate): Driver | { readonly why: string } {
  const entries = Object.entries(rows);
  const labels = entries.map(([label]) => [label]);
  const values = entries.map(([, text]) => [datumOf(text)]);
  const driver = driverFromTable.compute({ labels, values, name }, { quantity: 'ratio' });
  return driver instanceof Problem ? { why: speak(driver.message, 'metric') } : { ...driver, name };
}

function datumOf(text: string): CellDatum {
  const content = readContent(text);
  switch (content.kind) {
    case 'number':
    case 'quantity':
      return content.value;
    case 'truth':
      return content.truth;
    case 'text':
    case 'formula':
      return content.text;
    case 'empty':
      return null;
  }
}
