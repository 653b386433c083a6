import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { RecoveryCodes, SecondFactorView } from '../../../../../libs/contracts';
import { QueryView } from '../../components/query-view';
import classes from './own-sign-in.module.css';
import { RecoveryCodeList } from './recovery-code-list';
import { SecondFactorChange } from './second-factor-change';
import { useFactorChanged, secondFactorQuery } from './second-factor-query';
import { SecondFactorSetUp } from './second-factor-set-up';

/** One's own second factor: set up, renewed in its recovery codes, turned off. */
export function SecondFactor() {
  const factor = useQuery(secondFactorQuery);
  return (
    <QueryView query={factor} what="your second factor">
      {(view) => <Standing view={view} />}
    </QueryView>
  );
}

function Standing({ view }: { view: SecondFactorView }) {
  const [doing, setDoing] = useState<'nothing' | 'set-up' | 'renew' | 'off'>('nothing');
  const [codes, setCodes] = useState<RecoveryCodes | null>(null);
  const changed = useFactorChanged();
  const done = () => {
    setDoing('nothing');
    setCodes(null);
    changed();
  };
  if (codes) return <RecoveryCodeList codes={codes.codes} onKept={done} />;
  if (doing === 'set-up') return <SecondFactorSetUp view={view} onCodes={setCodes} onBack={done} />;
  if (doing !== 'nothing')
    return <SecondFactorChange what={doing} view={view} onCodes={setCodes} onDone={done} onBack={done} />;
  return (
    <div className={classes.narrow}>
      <p>{sayStanding(view)}</p>
      {view.on ? (
        <div className={classes.acts}>
          <Button onClick={() => setDoing('renew')}>New recovery codes</Button>
          {view.required ? null : <Button onClick={() => setDoing('off')}>Turn it off</Button>}
        </div>
      ) : (
        <Button variant="filled" onClick={() => setDoing('set-up')}>
          Set it up
        </Button>
      )}
    </div>
  );
}

function sayStanding({ on, required, recoveryLeft }: SecondFactorView): string {
  if (!on)
    return 'Off. With it, signing in asks for your password and for a code of an app on your phone, so that a password somebody has seen opens nothing.';
  const needed = required ? ' Your shop requires it of your role.' : '';
  return `On. ${recoveryLeft} recovery ${recoveryLeft === 1 ? 'code is' : 'codes are'} left.${needed}`;
}
