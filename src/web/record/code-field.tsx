// The code of a sheet, typed or scanned.
import { useState } from 'react';
import { Form } from 'react-aria-components/Form';
import { LONGEST_CODE } from '../../sheets/index.ts';
import { TextField } from '../children/text-field.tsx';
import type { Planner } from '../planning/planner.ts';
import { ScanCode } from '../scanning/scan-code.tsx';
import { words } from './words.ts';

export interface CodeFieldProps {
  readonly planner: Planner;
  readonly code: string;
  readonly objection: string;
  /** Whether the code came as a whole, and not letter by letter. */
  readonly isWhole: boolean;
  readonly onChange: (code: string) => void;
}

/** A code half typed is no fault: it is objected to once the person has done with it. */
export function CodeField({ planner, code, objection, isWhole, onChange }: CodeFieldProps) {
  const [finished, setFinished] = useState('');
  return (
    <Form
      className="code-entry"
      onSubmit={(event) => {
        event.preventDefault();
        setFinished(code);
      }}
    >
      <TextField
        label={words.code}
        help={words.codeHelp}
        value={code}
        most={LONGEST_CODE}
        isCode
        objection={isWhole || finished === code ? objection : ''}
        onChange={onChange}
        onBlur={() => setFinished(code)}
      />
      <ScanCode planner={planner} code={code} onCode={onChange} />
    </Form>
  );
}
