import { Button, NativeSelect, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import { TOKEN_SCOPES, type ApiTokenList, type ApiTokenView, type TokenScope } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { EmptyView } from '../../components/empty-view';
import { ShownOnce } from '../../components/shown-once';
import { capital, sayInstant, sayInstantDay } from '../../lib/say';
import { useMakeToken, useRevokeToken } from './programs-query';
import classes from './programs.module.css';
import { TickChoices } from './tick-choices';

/** The tokens there are, and a form for one more. */
export function Tokens({ tokens, scopes }: ApiTokenList) {
  return (
    <>
      <MakeToken scopes={scopes} />
      {tokens.length === 0 ? (
        <EmptyView title="No token yet">
          <p>A program that brings one can ask here what you may, and of that only what its scopes name.</p>
        </EmptyView>
      ) : (
        <ul>
          {tokens.map((token) => (
            <Token key={token.id} token={token} />
          ))}
        </ul>
      )}
    </>
  );
}

function MakeToken({ scopes }: { scopes: readonly TokenScope[] }) {
  const [name, setName] = useState('');
  const [days, setDays] = useState(90);
  const [chosen, setChosen] = useState<readonly TokenScope[]>([]);
  const make = useMakeToken();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    make.mutate({ name, scopes: [...chosen], days }, { onSuccess: () => (setName(''), setChosen([])) });
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <div className={classes.fields}>
        <TextInput
          label="Which program has it"
          value={name}
          onChange={(event) => setName(event.currentTarget.value)}
          maxLength={60}
          required
        />
        <NativeSelect
          label="How long it lasts"
          value={String(days)}
          data={[30, 90, 180, 366].map((one) => ({ value: String(one), label: `${one} days` }))}
          onChange={(event) => setDays(Number(event.currentTarget.value))}
        />
      </div>
      <TickChoices
        legend="What it may do in your name"
        choices={scopes}
        called={(scope) => TOKEN_SCOPES[scope].called}
        says={(scope) => capital(TOKEN_SCOPES[scope].says)}
        chosen={chosen}
        onChange={setChosen}
      />
      <div>
        <Button type="submit" variant="filled" loading={make.isPending} disabled={chosen.length === 0}>
          Make a token
        </Button>
      </div>
      <ActProblem error={make.error} />
      {make.data ? (
        <ShownOnce
          words={`Give this to ${make.data.made.name}, which sends it as Authorization: Bearer.`}
          secret={make.data.token}
        />
      ) : null}
    </form>
  );
}

function Token({ token }: { token: ApiTokenView }) {
  const [sure, setSure] = useState(false);
  const revoke = useRevokeToken(token);
  return (
    <li className={classes.row}>
      <div>
        <strong>{token.name}</strong> <span className="num soft">{token.prefix}…</span>
        <br />
        {token.scopes.map((scope) => TOKEN_SCOPES[scope].called).join(', ')}
        <br />
        <span className="soft">
          {standingOf(token)} Made by {token.madeBy.name},{' '}
          {token.lastUsedAt === null ? 'never used' : `last used ${sayInstant(token.lastUsedAt)}`}.
        </span>
      </div>
      {token.state === 'good' || token.state === 'idle' ? (
        <Button
          onClick={() => (sure ? revoke.mutate() : setSure(true))}
          onBlur={() => setSure(false)}
          color={sure ? 'danger' : undefined}
          loading={revoke.isPending}
          aria-label={sure ? `Revoke ${token.name} for good` : `Revoke ${token.name}`}
        >
          {sure ? 'Revoke it for good' : 'Revoke'}
        </Button>
      ) : null}
      <div className={classes.wide}>
        <ActProblem error={revoke.error} />
      </div>
    </li>
  );
}

function standingOf({ state, expiresAt }: ApiTokenView): string {
  if (state === 'revoked') return 'Revoked.';
  if (state === 'expired') return `Expired on ${sayInstantDay(expiresAt)}.`;
  const until = `Good until ${sayInstantDay(expiresAt)}.`;
  return state === 'idle' ? `Opens nothing while its maker does not work here. ${until}` : until;
}
