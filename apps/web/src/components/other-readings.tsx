import { Button } from '@mantine/core';
import type { BuildDates } from '../../../../libs/contracts';

interface OtherReadingsProps {
  buildDates: BuildDates;
  onTake: (serial: string) => void;
  busy?: boolean;
}

/** Other readings of a serial that does not fit; one is taken only by a person's hand. */
export function OtherReadings({ buildDates: { otherReadings }, onTake, busy = false }: OtherReadingsProps) {
  if (otherReadings.length === 0) return null;
  return (
    <>
      <h3>Could the serial be read otherwise?</h3>
      <ul>
        {otherReadings.map(({ serial, sentence }) => (
          <li key={serial}>
            <p>{sentence}</p>
            <Button loading={busy} onClick={() => onTake(serial)}>
              It reads {serial}
            </Button>
          </li>
        ))}
      </ul>
    </>
  );
}
