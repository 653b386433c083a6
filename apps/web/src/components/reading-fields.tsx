import { LENGTH_UNITS, MANNERS, TORQUE_UNITS, type Manner, type Reading } from '../../../../libs/contracts';
import { sayingIn } from '../../../../libs/papers';
import { PickOne } from './pick-one';

/** In which manner days and numbers are written, and which unit of a torque and of a length comes first. */
export function ReadingFields({ reading, onChange }: { reading: Reading; onChange: (reading: Reading) => void }) {
  const { manner, torque, length } = reading;
  return (
    <>
      <PickOne
        label="Days and numbers are written as"
        value={manner}
        all={MANNERS}
        words={mannerWords}
        onPick={(picked) => onChange({ manner: picked, torque, length })}
      />
      <PickOne
        label="Torque first in"
        value={torque}
        all={TORQUE_UNITS}
        onPick={(picked) => onChange({ manner, torque: picked, length })}
      />
      <PickOne
        label="Lengths first in"
        value={length}
        all={LENGTH_UNITS}
        words={(unit) => (unit === 'mm' ? 'millimetres' : 'inches')}
        onPick={(picked) => onChange({ manner, torque, length: picked })}
      />
    </>
  );
}

/** A manner by what it makes of a day and a number: `3 Mar 2017 · 1,234.5`. */
function mannerWords(manner: Manner): string {
  const say = sayingIn(manner, 'UTC');
  return `${say.day('2017-03-03')} · ${say.number(1234.5)} (${manner})`;
}
