import { Button } from '@mantine/core';
import type { BuildDates } from '../../../../libs/contracts';
import { Said } from './said';

export type OtherReading = BuildDates['otherReadings'][number];

interface OtherReadingsProps {
  buildDates: BuildDates;
  /** takes a reading; null where that kind of number is not taken here */
  onTake: (reading: OtherReading) => (() => void) | null;
  busy?: boolean;
}

/** Other readings of a number that does not fit; one is taken only by a person's hand. */
export function OtherReadings({ buildDates: { otherReadings }, onTake, busy = false }: OtherReadingsProps) {
  if (otherReadings.length === 0) return null;
  return (
    <>
      <h3>Could it be read otherwise?</h3>
      <ul>
        {otherReadings.map((reading) => {
          const take = onTake(reading);
          return (
            <li key={`${reading.id}-${reading.serial}`}>
              <p>
                <Said>{reading.sentence}</Said>
              </p>
              {take ? (
                <Button loading={busy} onClick={take}>
                  It reads {reading.serial}
                </Button>
              ) : null}
            </li>
          );
        })}
      </ul>
    </>
  );
}
