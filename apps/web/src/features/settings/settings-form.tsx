import { Button, Checkbox, TextInput } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import type { FormEvent } from 'react';
import type { ChangedSettings, ShopSettings } from '../../../../../libs/contracts';
import { Overtaken } from '../../components/overtaken';
import { useFilled } from '../../lib/use-filled';
import { useChangeSettings } from './settings-query';
import { StandingOrder } from './standing-order';
import { changesIn, typedFrom, type TypedSettings } from './typed-settings';
import classes from './settings.module.css';

/** What the shop settles for itself. */
export function SettingsForm({ settings }: { settings: ShopSettings }) {
  const filled = useFilled(settings, typedFrom);
  const { typed, setTyped, version, overtakenBy } = filled;
  const save = useChangeSettings(version);
  const change = (part: Partial<TypedSettings>) => setTyped((now) => ({ ...now, ...part }));
  const read = changesIn(typed, settings);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (read.ok && !read.none) save.mutate(read.changes, { onSuccess: filled.fill });
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <fieldset className={classes.part}>
        <legend>How papers stand against each other</legend>
        <p>Where two papers say different things, the one that stands higher decides; of two that tie, the later.</p>
        <StandingOrder ranks={typed.ranks} onChange={(ranks) => change({ ranks })} />
      </fieldset>
      <LookBack typed={typed} onChange={change} />
      <Limits typed={typed} onChange={change} />
      <KeepShelf typed={typed} onChange={change} />
      {read.ok ? null : <p role="status">{read.problem}</p>}
      <Overtaken filled={filled} error={save.error} />
      {save.data ? <Kept answer={save.data} /> : null}
      <Button
        type="submit"
        variant="filled"
        loading={save.isPending}
        disabled={!read.ok || read.none || overtakenBy !== null}
      >
        {read.ok && read.none
          ? 'Nothing is changed'
          : onlyShelf(read)
            ? 'Keep it'
            : 'Keep it and judge everything again'}
      </Button>
    </form>
  );
}

interface PartProps {
  typed: TypedSettings;
  onChange: (part: Partial<TypedSettings>) => void;
}

function LookBack({ typed, onChange }: PartProps) {
  return (
    <fieldset className={classes.part}>
      <legend>How far back owners are called</legend>
      <TextInput
        label="Months since the unit was handed over"
        description="A stop use is called for however long ago it was."
        className={classes.short}
        inputMode="numeric"
        value={typed.months}
        onChange={(event) => onChange({ months: event.currentTarget.value })}
      />
    </fieldset>
  );
}

function Limits({ typed, onChange }: PartProps) {
  return (
    <fieldset className={classes.part}>
      <legend>When a shear fastener counts as breaking sooner or later</legend>
      <p>
        Its torque over that of the required part. Within these limits it counts as required. No standard sets them:
        they are the shop&apos;s own choice, and 0.85 and 1.15 are only where a shop starts. The rule decides which part
        is right; the limits say how bad a wrong one is.
      </p>
      <div className={classes.fields}>
        <TextInput
          label="Sooner below"
          description="Above 0, at most 1"
          inputMode="decimal"
          value={typed.soonerBelow}
          onChange={(event) => onChange({ soonerBelow: event.currentTarget.value })}
        />
        <TextInput
          label="Later above"
          description="1 or more"
          inputMode="decimal"
          value={typed.laterAbove}
          onChange={(event) => onChange({ laterAbove: event.currentTarget.value })}
        />
      </div>
    </fieldset>
  );
}

function KeepShelf({ typed, onChange }: PartProps) {
  return (
    <fieldset className={classes.part}>
      <legend>The shelf</legend>
      <Checkbox
        label="Parts are kept on a shelf that is counted"
        description="Picking then takes from the shelf, and what is not there cannot be picked from it."
        checked={typed.keepShelf}
        onChange={(event) => onChange({ keepShelf: event.currentTarget.checked })}
      />
    </fieldset>
  );
}

/** Whether a shelf is kept changes no answer, so nothing is judged again for it. */
function onlyShelf(read: ReturnType<typeof changesIn>): boolean {
  return read.ok && Object.keys(read.changes).join() === 'keepShelf';
}

function Kept({ answer: { recheckId } }: { answer: ChangedSettings }) {
  if (recheckId === null) return <p role="status">Kept; nothing is judged again for it.</p>;
  return (
    <p role="status">
      Kept. A recheck of everything has started:{' '}
      <Link to="/rechecks/$id" params={{ id: recheckId }}>
        see how far it is
      </Link>
      .
    </p>
  );
}
