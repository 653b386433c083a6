import { Button, NativeSelect, Textarea, TextInput } from '@mantine/core';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { FormEvent } from 'react';
import {
  LABEL_SHEETS,
  MANNERS,
  PAPER_SIZES,
  settledPrints,
  TORQUE_UNITS,
  type PrintSettings,
  type SettledPrints,
} from '../../../../../libs/contracts';
import { sayingIn, sayLabelSheet } from '../../../../../libs/papers';
import { Overtaken } from '../../components/overtaken';
import { request } from '../../lib/api-client';
import { printSettingsQuery } from '../../lib/print-settings-query';
import { useFilled } from '../../lib/use-filled';
import classes from './settings.module.css';

const typedFrom = ({ version: _, ...prints }: SettledPrints): PrintSettings => prints;

/** Who the shop is on paper, the paper, and the manner of writing; it changes no answer, so nothing is judged again. */
export function PrintSettingsForm({ settings }: { settings: SettledPrints }) {
  const filled = useFilled(settings, typedFrom);
  const { typed, setTyped, version, overtakenBy } = filled;
  const client = useQueryClient();
  const save = useMutation<SettledPrints, Error, PrintSettings>({
    mutationFn: (body) => request(settledPrints, 'PUT', '/settings/prints', { body, version }),
    onSuccess: (kept) => client.setQueryData(printSettingsQuery.queryKey, kept),
    onError: () => client.invalidateQueries({ queryKey: printSettingsQuery.queryKey }),
  });
  const set = (part: Partial<PrintSettings>) => setTyped((now) => ({ ...now, ...part }));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    save.mutate(typed, { onSuccess: filled.fill });
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <Letterhead typed={typed} set={set} />
      <fieldset className={classes.part}>
        <legend>Paper and manner of writing</legend>
        <div className={classes.wideFields}>
          <Choice label="Paper" value={typed.paper} all={PAPER_SIZES} onPick={(paper) => set({ paper })} />
          <Choice
            label="Sheet of address labels"
            value={typed.labels}
            all={LABEL_SHEETS}
            words={sayLabelSheet}
            onPick={(labels) => set({ labels })}
          />
          <Choice
            label="Days and numbers are written as"
            value={typed.manner}
            all={MANNERS}
            words={mannerWords}
            onPick={(manner) => set({ manner })}
          />
          <Choice
            label="Torque first in"
            value={typed.torque}
            all={TORQUE_UNITS}
            onPick={(torque) => set({ torque })}
          />
        </div>
      </fieldset>
      <Overtaken filled={filled} error={save.error} />
      {save.isSuccess ? <p role="status">Kept. The next print has it.</p> : null}
      <Button type="submit" variant="filled" loading={save.isPending} disabled={overtakenBy !== null}>
        Keep how prints look
      </Button>
    </form>
  );
}

interface PartProps {
  typed: PrintSettings;
  set: (part: Partial<PrintSettings>) => void;
}

function Letterhead({ typed, set }: PartProps) {
  return (
    <fieldset className={classes.part}>
      <legend>The shop on paper</legend>
      <p>Stands on handover sheets, letters and e-mails.</p>
      <div className={classes.wideFields}>
        <TextInput
          label="Name of the shop"
          maxLength={120}
          value={typed.shopName}
          onChange={(event) => set({ shopName: event.currentTarget.value })}
        />
        <TextInput
          label="Phone of the shop"
          maxLength={50}
          value={typed.phone}
          onChange={(event) => set({ phone: event.currentTarget.value })}
        />
        <TextInput
          label="E-mail address of the shop"
          maxLength={200}
          value={typed.email}
          onChange={(event) => set({ email: event.currentTarget.value })}
        />
        <Textarea
          label="Address of the shop"
          autosize
          maxLength={300}
          value={typed.address}
          onChange={(event) => set({ address: event.currentTarget.value })}
        />
      </div>
    </fieldset>
  );
}

interface ChoiceProps<T extends string> {
  label: string;
  value: T;
  all: readonly T[];
  words?: (one: T) => string;
  onPick: (one: T) => void;
}

function Choice<T extends string>({ label, value, all, words = String, onPick }: ChoiceProps<T>) {
  return (
    <NativeSelect
      label={label}
      value={value}
      data={all.map((one) => ({ value: one, label: words(one) }))}
      onChange={(event) => onPick(all.find((one) => one === event.currentTarget.value) ?? value)}
    />
  );
}

/** A manner by what it makes of a day and a number: `3 Mar 2017 · 1,234.5`. */
function mannerWords(manner: PrintSettings['manner']): string {
  const say = sayingIn(manner, 'UTC');
  return `${say.day('2017-03-03')} · ${say.number(1234.5)} (${manner})`;
}
