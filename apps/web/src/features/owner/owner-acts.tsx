import { Button } from '@mantine/core';
import { useState } from 'react';
import type { PersonalData } from '../../../../../libs/contracts';
import { ReasonDialog } from '../../components/reason-dialog';
import { address } from '../../lib/api-client';
import { useEraseOwner } from './personal-data-query';
import classes from './owner.module.css';

/** What can be done with what is kept of a person: handed over as a file or on paper, and erased. */
export function OwnerActs({ owner }: { owner: PersonalData['owner'] }) {
  const [asked, setAsked] = useState(false);
  const erase = useEraseOwner(owner);
  const gone = owner.erasedAt !== null;
  return (
    <div className={`${classes.acts} no-print`}>
      <Button component="a" href={address(`/owners/${owner.id}/personal-data`)} download={`owner-${owner.id}.json`}>
        Download it (JSON)
      </Button>
      <Button onClick={() => window.print()}>Print this page</Button>
      {gone ? null : (
        <Button color="danger" onClick={() => setAsked(true)}>
          Erase this owner
        </Button>
      )}
      {asked ? (
        <ReasonDialog
          open
          danger
          title="Erase this owner"
          act="Erase for good"
          label="Why, without naming anybody"
          busy={erase.isPending}
          error={erase.error}
          onClose={() => setAsked(false)}
          onReason={(reason) => erase.mutate(reason, { onSuccess: () => setAsked(false) })}
        >
          <p>
            Name, phone, addresses, who said yes, what was noted of calls, e-mails and what stands under photos go for
            good, and the owner can no longer be called about a dangerous part. Spreadsheets of owners and tickets that
            wait to be imported go too.
          </p>
          <p>What stays, with nobody&apos;s name to it:</p>
          <ul>
            <li>machines with serial and plate, tickets, parts and verdicts,</li>
            <li>
              what was written about the machine: complaints, reasons, findings. Read them first: whatever somebody
              wrote there about a person stays too,
            </li>
            <li>photos without their words; take away those that show a person,</li>
            <li>backups and files that were taken out before, which nobody reaches from here.</li>
          </ul>
        </ReasonDialog>
      ) : null}
    </div>
  );
}
