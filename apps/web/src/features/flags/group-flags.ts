import type { FlagView } from '../../../../../libs/contracts';

/** Flags that are equals: the same part in the same position, for the same reason. */
export interface FlagGroup {
  key: string;
  title: string;
  severity: number;
  flags: FlagView[];
}

const keyOf = (flag: FlagView): string =>
  [flag.verdict, flag.positionName, flag.part?.key, flag.required?.key, flag.source].join(' | ');

/** What the equals share, in words: `Outer pin: 70412B fitted, 70412C required`. */
export function groupTitle({ positionName, part, required }: FlagView): string {
  const fitted = part ? `${part.number} fitted` : 'a part that could not be told';
  return `${positionName}: ${fitted}${required ? `, ${required.number} required` : ''}`;
}

/** Groups of equals, the worst first, then the larger. The order inside a group stays. */
export function groupFlags(flags: readonly FlagView[]): FlagGroup[] {
  const groups = new Map<string, FlagGroup>();
  for (const flag of flags) {
    const key = keyOf(flag);
    const group = groups.get(key) ?? { key, title: groupTitle(flag), severity: flag.severity, flags: [] };
    group.flags.push(flag);
    group.severity = Math.max(group.severity, flag.severity);
    groups.set(key, group);
  }
  return [...groups.values()].sort((a, b) => b.severity - a.severity || b.flags.length - a.flags.length);
}
