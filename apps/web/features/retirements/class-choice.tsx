import { SelectField } from '@/components/select-field';

export interface ClassChoiceProps {
  classes: readonly string[];
  /** Null: all cars. */
  chosen: string | null;
  onChoose: (className: string | null) => void;
}

const ALL = '';

/** One class or all cars; nothing where the lists name no class. */
export function ClassChoice({ classes, chosen, onChoose }: ClassChoiceProps) {
  if (classes.length === 0) return null;
  return (
    <div className="screen-only">
      <SelectField
        label="Class"
        options={[
          { value: ALL, label: 'All cars' },
          ...classes.map((className) => ({ value: className, label: className })),
        ]}
        value={chosen ?? ALL}
        onChange={({ target }) => onChoose(target.value === ALL ? null : target.value)}
      />
    </div>
  );
}
