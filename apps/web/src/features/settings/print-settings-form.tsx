import { Button, Textarea, TextInput } from '@mantine/core';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { FormEvent } from 'react';
import {
  LABEL_SHEETS,
  PAPER_SIZES,
  settledPrints,
  type PrintSettings,
  type SettledPrints,
} from '../../../../../libs/contracts';
import { sayLabelSheet } from '../../../../../libs/papers';
import { Overtaken } from '../../components/overtaken';
import { PickOne } from '../../components/pick-one';
import { ReadingFields } from '../../components/reading-fields';
import { request } from '../../lib/api-client';
import { printSettingsQuery } from '../../lib/print-settings-query';
import { sessionQuery } from '../../lib/session';
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
    onSuccess: (kept) => {
      client.setQueryData(printSettingsQuery.queryKey, kept);
      // Who reads as the shop does reads anew.
      void client.invalidateQueries({ queryKey: sessionQuery.queryKey });
    },
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
          <PickOne label="Paper" value={typed.paper} all={PAPER_SIZES} onPick={(paper) => set({ paper })} />
          <PickOne
            label="Sheet of address labels"
            value={typed.labels}
            all={LABEL_SHEETS}
            words={sayLabelSheet}
            onPick={(labels) => set({ labels })}
          />
          <ReadingFields reading={typed} onChange={set} />
        </div>
      </fieldset>
      <Overtaken filled={filled} error={save.error} />
      {save.isSuccess ? (
        <p role="status">Kept. The next print has it, and so has the page of whoever reads as the shop does.</p>
      ) : null}
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
