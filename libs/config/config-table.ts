import { VARIABLES } from './environment';

/** The table of all variables in Markdown, as it stands in the README: one row a variable, no trailing newline. */
export function configTable(): string {
  const rows = Object.entries(VARIABLES).map(
    ([name, { fallback, meaning }]) => `| \`${name}\` | ${fallback} | ${meaning} |`,
  );
  return ['| Variable | Default | Meaning |', '| --- | --- | --- |', ...rows].join('\n');
}
