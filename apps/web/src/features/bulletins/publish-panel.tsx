import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { BulletinDetail } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { ReasonDialog } from '../../components/reason-dialog';
import { useMay } from '../../lib/session';
import { useBulletinAct, useWhatIf } from './bulletins-query';
import { WhatIfResult } from './what-if-result';
import classes from './bulletins.module.css';

/** What can be done with a paper now: what-if and publish while it is a draft, withdraw once it is published. */
export function PublishPanel({ bulletin }: { bulletin: BulletinDetail }) {
  const [withdrawing, setWithdrawing] = useState(false);
  const whatIf = useWhatIf(bulletin.id);
  const act = useBulletinAct(bulletin.id, bulletin.version);
  const mayPublish = useMay('publish-bulletins');
  const mayEdit = useMay('edit-bulletins');
  const mayWithdraw = useMay('withdraw-bulletins');
  const draft = bulletin.state === 'draft';
  const stop = () => setWithdrawing(false);
  const withdraw = (reason: string) =>
    act.mutate({ method: 'POST', path: '/withdraw', body: { reason } }, { onSuccess: stop });
  const publish = (whatIfRevision: number) =>
    act.mutate({ method: 'POST', path: '/publish', body: { whatIfRevision } });
  return (
    <>
      <div className={classes.acts}>
        {draft && mayEdit ? (
          <Button component={Link} to={`/bulletins/${bulletin.id}/edit`}>
            Change it
          </Button>
        ) : null}
        {draft && mayPublish ? <SeeThenPublish whatIf={whatIf} publishing={act.isPending} onPublish={publish} /> : null}
        {bulletin.state === 'published' && mayWithdraw ? (
          <Button color="danger" onClick={() => setWithdrawing(true)}>
            Withdraw
          </Button>
        ) : null}
      </div>
      <ActProblem error={whatIf.error ?? (withdrawing ? null : act.error)} />
      {draft && whatIf.data ? <WhatIfResult result={whatIf.data} /> : null}
      {withdrawing ? (
        <ReasonDialog
          open
          danger
          title={`Withdraw ${bulletin.number}`}
          act="Withdraw it"
          busy={act.isPending}
          error={act.error}
          onClose={stop}
          onReason={withdraw}
        >
          <p>Its rules end, what it replaced holds again, and every install it touched is judged anew.</p>
        </ReasonDialog>
      ) : null}
    </>
  );
}

interface SeeThenPublishProps {
  whatIf: ReturnType<typeof useWhatIf>;
  publishing: boolean;
  /** takes the revision of the rulebook that was looked at */
  onPublish: (whatIfRevision: number) => void;
}

/** Nobody publishes unseen: the second button waits for the answer to the first. */
function SeeThenPublish({ whatIf, publishing, onPublish }: SeeThenPublishProps) {
  const { data, isPending } = whatIf;
  return (
    <>
      <Button loading={isPending} onClick={() => whatIf.mutate()}>
        What if it were published?
      </Button>
      <Button
        variant="filled"
        disabled={!data || isPending}
        loading={publishing}
        onClick={() => (data ? onPublish(data.revision) : undefined)}
      >
        Publish
      </Button>
      {data ? null : <span className="soft">Look at what it would do first.</span>}
    </>
  );
}
