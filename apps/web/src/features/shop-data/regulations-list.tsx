import classes from './shop-data.module.css';

/** What is the same in every shop: how public rules date marks, and where it is written. */
const REGULATIONS = [
  {
    rule: 'Vehicle number: the character in place 10 is the model year, place 9 checks the others; the letters come round every 30 years, and place 7 tells the cycle of light vehicles.',
    source: '49 CFR 565.15',
  },
  {
    rule: 'Engine family: its first character is the model year of the engine. A machine is not older than its engine, but makers use up earlier ones.',
    source: 'EPA, Information about Family Naming Conventions; 40 CFR 1068.105(a), the latter from memory',
  },
  {
    rule: 'Model year: from 2 January of the year before to 31 December of its own year.',
    source: '40 CFR 85.2302 to 85.2304',
  },
  {
    rule: 'Tyre: week and year, four digits since 2000, three before, where every decade stays possible; week 1 is the first full week, Sunday to Saturday.',
    source: '49 CFR 574.5; the change to four digits in 64 FR 36807',
  },
  { rule: 'Week of the year in a serial: Monday to Sunday, week 1 has the first Thursday.', source: 'ISO 8601' },
] as const;

export function RegulationsList() {
  return (
    <ul className={classes.list}>
      {REGULATIONS.map(({ rule, source }) => (
        <li key={source} className={classes.edition}>
          <p>{rule}</p>
          <p className="soft">{`Source: ${source}`}</p>
        </li>
      ))}
    </ul>
  );
}
