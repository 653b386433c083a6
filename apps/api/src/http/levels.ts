/** Whether lists and objects lie deeper in one another than so many levels. It walks level by level, so none is too deep. */
export function isDeeperThan(levels: number, value: unknown): boolean {
  let level = holders([value]);
  for (let depth = 0; depth < levels; depth++) {
    if (level.length === 0) return false;
    level = holders(level.flatMap((one): unknown[] => Object.values(one)));
  }
  return level.length > 0;
}

const holders = (values: readonly unknown[]): object[] =>
  values.filter((value) => typeof value === 'object' && value !== null);
