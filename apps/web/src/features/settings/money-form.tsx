import { Button, Checkbox, TextInput } from '@mantine/core';
import type { FormEvent } from 'react';
import type { MoneySettings, SettledMoney } from '../../../../../libs/contracts';
import { Overtaken } from '../../components/overtaken';
import { readMoney } from '../../lib/say';
import { useFilled } from '../../lib/use-filled';
import { useChangeMoney } from './money-query';
import classes from './settings.module.css';

const typedFrom = ({ currency, tax, hourMinor }: MoneySettings) => ({
  currency,
  name: tax.name,
  percent: String(tax.basisPoints / 100),
  included: tax.included,
  hour: (hourMinor / 100).toFixed(2),
});

/** What is typed as it would be kept; null while something cannot be. */
function readTyped({ currency, name, percent, included, hour }: ReturnType<typeof typedFrom>) {
  const [basisPoints, hourMinor] = [readMoney(percent), readMoney(hour)];
  const badPercent = basisPoints === null || basisPoints > 10_000;
  const badHour = hourMinor === null;
  if (badPercent || badHour || name.trim() === '') return { badPercent, badHour, read: null };
  const tax = { name: name.trim(), basisPoints, included };
  const read: MoneySettings = { currency: currency.trim().toUpperCase(), tax, hourMinor };
  return { badPercent, badHour, read };
}

/** Currency, tax and the usual price of an hour. Estimates written down before keep theirs; nothing is judged again. */
export function MoneyForm({ money }: { money: SettledMoney }) {
  const filled = useFilled(money, typedFrom);
  const { typed, setTyped } = filled;
  const save = useChangeMoney(filled.version);
  const set = (part: Partial<typeof typed>) => setTyped({ ...typed, ...part });
  const { badPercent, badHour, read } = readTyped(typed);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (read) save.mutate(read, { onSuccess: filled.fill });
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <fieldset className={classes.part}>
        <legend>Money</legend>
        <p>For estimates. Those written down before stay as they are.</p>
        <div className={classes.fields}>
          <TextInput
            label="Currency"
            value={typed.currency}
            maxLength={3}
            onChange={(event) => set({ currency: event.currentTarget.value })}
          />
          <TextInput
            label="Name of the tax"
            value={typed.name}
            maxLength={40}
            onChange={(event) => set({ name: event.currentTarget.value })}
          />
          <TextInput
            label="Tax in percent"
            inputMode="decimal"
            value={typed.percent}
            error={badPercent ? 'Write 0 to 100, such as 21.' : null}
            onChange={(event) => set({ percent: event.currentTarget.value })}
          />
          <TextInput
            label="An hour of labour"
            inputMode="decimal"
            value={typed.hour}
            error={badHour ? 'Write it as 64.00.' : null}
            onChange={(event) => set({ hour: event.currentTarget.value })}
          />
        </div>
        <Checkbox
          label="Prices hold the tax already"
          checked={typed.included}
          onChange={(event) => set({ included: event.currentTarget.checked })}
        />
      </fieldset>
      <Overtaken filled={filled} error={save.error} />
      {save.data && <p role="status">Kept.</p>}
      <Button type="submit" loading={save.isPending} disabled={read === null || filled.overtakenBy !== null}>
        Keep the money settings
      </Button>
    </form>
  );
}
