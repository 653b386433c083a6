import { Button } from '@mantine/core';
import classes from './own-sign-in.module.css';

/** The recovery codes, shown this once. */
export function RecoveryCodeList({ codes, onKept }: { codes: readonly string[]; onKept: () => void }) {
  return (
    <div className={classes.narrow}>
      <p role="status">Your second factor is on.</p>
      <h3 id="recovery-codes">Recovery codes</h3>
      <p>
        If the app is lost, one of these stands in for a code, once. They are shown only now: print them, or write them
        down, and keep them where you would find them without your phone.
      </p>
      <ul aria-labelledby="recovery-codes" className={classes.codes}>
        {codes.map((code) => (
          <li key={code}>
            <code>{code}</code>
          </li>
        ))}
      </ul>
      <div className={classes.acts}>
        <Button onClick={() => window.print()}>Print them</Button>
        <Button variant="filled" onClick={onKept}>
          I have kept them
        </Button>
      </div>
    </div>
  );
}
