import type { Difference, FastenerComparison } from './comparison';
import { sayRange, sayTorque } from './say';
import type { Prepared } from './shear-capacity';
import type { ShearTorque } from './shear-torque';
import { sayLength } from './units';

/** A comparison before it is put into words. */
type Weighed = Omit<FastenerComparison, 'sentences' | 'caution'>;

/** What sets two fasteners apart, in the order to look: diameter, then what lies in the shear plane, then grade. */
export function differencesOf(
  fitted: Prepared,
  required: Prepared,
  one: ShearTorque,
  other: ShearTorque,
): Difference[] {
  const found: Difference[] = [];
  const [is, asked] = [fitted.spec.diameterMm, required.spec.diameterMm];
  if (Math.abs(is - asked) > 0.005) {
    const area = (is / asked) ** 2;
    const sentence = `Diameter ${sayLength(is)} where ${sayLength(asked)} is required; that alone is ${sayRange({ low: area, high: area })} times the area.`;
    found.push({ field: 'diameter', sentence });
  }
  const [cut, cutAsked] = [sectionsOf(one), sectionsOf(other)];
  if (cut !== cutAsked && !(isPlain(fitted, one) && isPlain(required, other))) {
    found.push({ field: 'section', sentence: `In the shear plane lies ${cut}; in the required part ${cutAsked}.` });
  }
  const [grade, gradeAsked] = [gradesOf(one), gradesOf(other)];
  if (grade !== gradeAsked) found.push({ field: 'grade', sentence: `Grade ${grade} where ${gradeAsked} is required.` });
  return found;
}

/** The comparison in plain sentences, the answer first. */
export function sentencesOf(comparison: Weighed): string[] {
  const { fitted, required, because, threshold } = comparison;
  return [
    answer(comparison),
    `Fitted lets go at ${sayTorque(fitted.torqueNm)}; required at ${sayTorque(required.torqueNm)}.`,
    ...because.map((difference) => difference.sentence),
    ...rated(comparison),
    ...widenings(comparison),
    LEAST,
    `This shop counts ${threshold.soonerBelow} to ${threshold.laterAbove} as required; no standard sets these limits.`,
  ];
}

const LEAST = 'Tables give the least a grade may have, so the fitted part can be stronger than shown.';

function answer({ class: broken, ratio, mayBreakLater }: Weighed): string {
  const times = `${sayRange(ratio)} times the torque of the required part`;
  if (broken === 'breaks-later') return `Breaks later: it lets go at ${times}, so the drive line can be hurt first.`;
  if (broken === 'breaks-sooner') return `Breaks sooner: it lets go at ${times} and will fail in normal work.`;
  if (broken === 'as-required') return `As required: it lets go at ${times}.`;
  const worst = mayBreakLater ? 'it may break later and hurt the drive line' : 'it may break sooner';
  return `Cannot be told: it lets go at ${times}; ${worst}.`;
}

function rated({ againstRated }: Weighed): string[] {
  if (againstRated === null) return ["The drive line's rated torque is not known here."];
  const { ratedTorqueNm, ratio, exceeds } = againstRated;
  const rating = sayTorque({ low: ratedTorqueNm, high: ratedTorqueNm });
  const ends = {
    no: 'by the tables it lets go before that',
    maybe: 'it may hold beyond that',
    yes: 'it holds beyond that',
  }[exceeds];
  return [`The drive line is rated ${rating}: the fitted part lets go at ${sayRange(ratio)} times that; ${ends}.`];
}

function widenings({ fitted, required }: Weighed): string[] {
  const said = (torque: ShearTorque, part: string): string[] =>
    torque.widenedBy.map((one) => `${part}: ${one.sentence}`);
  return [...said(fitted, 'Fitted part'), ...said(required, 'Required part')];
}

function sectionsOf(torque: ShearTorque): string {
  return torque.sections.map((section) => section.words).join(', or ');
}

/** Nothing but solid shank in the planes: then the diameter has said it all. */
function isPlain({ spec }: Prepared, torque: ShearTorque): boolean {
  return spec.boreDiameterMm === null && torque.sections.every((section) => section.kind === 'shank');
}

function gradesOf(torque: ShearTorque): string {
  return torque.grades.map(({ system, grade }) => `${system} ${grade}`).join(' or ');
}
