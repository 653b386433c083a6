import { TextInput } from '@mantine/core';
import { sayDayText } from '../lib/say';

interface DayFieldProps {
  label: string;
  /** YYYY-MM-DD; empty when no day is given */
  value: string;
  onChange: (value: string) => void;
  description?: string;
  required?: boolean;
  disabled?: boolean;
  /** whether one is at it as soon as it is there */
  autoFocus?: boolean;
  onKeyDown?: () => void;
  onPointerDown?: () => void;
  onBlur?: () => void;
}

/** A day, said in words under its label: the figures in the field stand in the order of the device. */
export function DayField({ label, value, onChange, description, ...rest }: DayFieldProps) {
  return (
    <TextInput
      type="date"
      label={label}
      description={value ? sayDayText(value) : (description ?? 'No day given')}
      value={value}
      {...rest}
      onChange={(event) => onChange(event.currentTarget.value)}
    />
  );
}
