/** Shortest password of somebody who has no second factor, in characters (ASVS 5.0.0, 6.2.1 and NIST SP 800-63B). */
export const SHORTEST = 15;
/** Shortest with a second factor. */
export const SHORTEST_WITH_SECOND = 8;

/** Of a long password the first so many characters are looked at when it is compared with what guessers try first. */
const LOOKED_AT = 100;
/** The estimator's score from 0 to 4; from 3 on, about 10^8 guesses do not find it. */
const LOWEST_SCORE = 3;

/**
 * Why a password will not do, in one sentence; null when it will. Length counts in characters and is the only rule of
 * form; beyond it a password is refused when it is one of, or made up from, those that guessers try first.
 */
export async function passwordProblem(
  password: string,
  { login, name, secondFactor }: { login: string; name: string; secondFactor: boolean },
): Promise<string | null> {
  const shortest = secondFactor ? SHORTEST_WITH_SECOND : SHORTEST;
  const length = [...password].length;
  if (length < shortest) return `The password has ${length} characters, but needs at least ${shortest}.`;
  const { score } = (await estimator())(password.slice(0, LOOKED_AT), [login, ...name.split(/\s+/), 'revright']);
  if (score < LOWEST_SCORE)
    return 'The password is among those that are guessed first; take words nobody would expect.';
  return null;
}

type Estimate = (password: string, ofThePerson: string[]) => { score: number };
let loading: Promise<Estimate> | null = null;

/** The list of common passwords is large, and most starts of the program never need it. */
function estimator(): Promise<Estimate> {
  loading ??= Promise.all([import('@zxcvbn-ts/core'), import('@zxcvbn-ts/language-common')]).then(
    ([{ zxcvbn, zxcvbnOptions }, { dictionary, adjacencyGraphs }]) => {
      zxcvbnOptions.setOptions({ dictionary, graphs: adjacencyGraphs });
      return zxcvbn;
    },
  );
  return loading;
}
