import { type RefObject, useState } from 'react';
import type { UseFormReturn } from 'react-hook-form';
import { ChoiceGroup } from '@/components/choice-group';
import { Disclosure } from '@/components/disclosure';
import { FileField } from '@/components/file-field';
import { TextArea } from '@/components/text-area';
import { textOfFile } from '@/lib/text-of-file';
import type { HowToImport } from './check-card-table';
import { TableHelp } from './table-help';

export interface ImportForm {
  text: string;
  how: HowToImport;
}

const HOW_CHOICES = [
  { value: 'add', label: 'Add them', hint: 'All rows become new cards, behind those the car has.' },
  {
    value: 'replace',
    label: 'Replace the cards of the car',
    hint: 'A card of the same name stays the same card, with its history. Cards that are not in the table are removed.',
  },
];

export interface ImportFieldsProps {
  form: UseFormReturn<ImportForm>;
  boxRef: RefObject<HTMLTextAreaElement | null>;
}

export function ImportFields({ form, boxRef }: ImportFieldsProps) {
  const { register, formState, setValue } = form;
  const [trouble, setTrouble] = useState<string | undefined>(undefined);
  const { ref: registerBox, ...box } = register('text');

  async function take(file: File) {
    const read = await textOfFile(file, 'a table of cards');
    setTrouble(read.ok ? undefined : read.says);
    if (read.ok) setValue('text', read.text, { shouldDirty: true, shouldValidate: true });
  }

  return (
    <>
      <FileField
        label="A file"
        hint="A CSV file, as downloaded from a car here and changed in a spreadsheet."
        accept=".csv,.txt,.tsv,text/csv,text/plain"
        error={trouble}
        onPick={take}
      />
      <TextArea
        label="Or the rows, pasted"
        hint="With the headings in the first row. Name, Place, Every and Minutes are needed; other columns may be left out."
        rows={14}
        keepLines
        spellCheck={false}
        autoComplete="off"
        error={formState.errors.text?.message}
        {...box}
        ref={(element) => {
          registerBox(element);
          boxRef.current = element;
        }}
      />
      <ChoiceGroup label="What becomes of them" choices={HOW_CHOICES} {...register('how')} />
      <Disclosure summary="What to write in the columns">
        <TableHelp />
      </Disclosure>
    </>
  );
}
