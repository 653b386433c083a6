import { NativeSelect } from '@mantine/core';

interface OptionFieldsProps {
  options: readonly { code: string; name: string }[];
  value: Record<string, boolean>;
  onChange: (value: Record<string, boolean>) => void;
}

const said = (fitted: boolean | undefined): string => (fitted === undefined ? '' : fitted ? 'yes' : 'no');

/** Per option: fitted, not fitted, or not known, which is left out of the value. */
export function OptionFields({ options, value, onChange }: OptionFieldsProps) {
  const set = (code: string, answer: string) => {
    const { [code]: _old, ...rest } = value;
    onChange(answer === '' ? rest : { ...rest, [code]: answer === 'yes' });
  };
  return options.map(({ code, name }) => (
    <NativeSelect
      key={code}
      label={name}
      value={said(value[code])}
      onChange={(event) => set(code, event.currentTarget.value)}
    >
      <option value="">Not known</option>
      <option value="yes">Fitted</option>
      <option value="no">Not fitted</option>
    </NativeSelect>
  ));
}
