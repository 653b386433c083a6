import { NativeSelect } from '@mantine/core';

interface PickOneProps<T extends string> {
  label: string;
  value: T;
  all: readonly T[];
  /** How an entry reads; as it is when left out. */
  words?: (one: T) => string;
  onPick: (one: T) => void;
}

/** One of a few words. */
export function PickOne<T extends string>({ label, value, all, words = String, onPick }: PickOneProps<T>) {
  return (
    <NativeSelect
      label={label}
      value={value}
      data={all.map((one) => ({ value: one, label: words(one) }))}
      onChange={(event) => onPick(all.find((one) => one === event.currentTarget.value) ?? value)}
    />
  );
}
