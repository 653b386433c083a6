import { z } from 'zod';
import { instantText, role, rowId } from './common';

const login = z
  .string()
  .trim()
  .toLowerCase()
  .regex(/^[a-z0-9][a-z0-9._-]{0,38}[a-z0-9]$/, {
    error: 'expected a sign-in name of 2 to 40 letters, digits, dots, dashes or underscores',
  });
const personName = z.string().trim().min(1, { error: 'expected a name' }).max(100);

/** A person of the shop as an administrator sees them. */
export const personView = z.object({
  id: rowId,
  login: z.string(),
  name: z.string(),
  role,
  location: z.object({ id: rowId, code: z.string(), name: z.string() }),
  active: z.boolean(),
  /** false until the person has set a password */
  hasPassword: z.boolean(),
  hasSecondFactor: z.boolean(),
  /** as whom the person signs in with another provider; `bound` once that has happened */
  elsewhere: z.object({ email: z.string(), bound: z.boolean() }).nullable(),
  /** until when the one-time link that was handed out can be used; null when there is none */
  linkUntil: instantText.nullable(),
  version: z.int(),
});
export type PersonView = z.infer<typeof personView>;

/** GET /api/people: everybody who works or has worked here, by sign-in name. */
export const peopleList = z.object({
  people: z.array(personView),
  locations: z.array(z.object({ id: rowId, code: z.string(), name: z.string() })),
});
export type PeopleList = z.infer<typeof peopleList>;

/** POST /api/people */
export const newPerson = z.object({ login, name: personName, role, locationId: rowId });
export type NewPerson = z.infer<typeof newPerson>;

/** PATCH /api/people/:id (If-Match): a field left out stays; `active: false` ends every session at once. */
export const changePerson = z.object({
  name: personName.optional(),
  role: role.optional(),
  locationId: rowId.optional(),
  active: z.boolean().optional(),
});
export type ChangePerson = z.infer<typeof changePerson>;

/** PUT /api/people/:id/elsewhere (If-Match): as whom the person may sign in with another provider; null for nobody. */
export const personElsewhere = z.object({
  email: z
    .email({ error: 'expected an e-mail address' })
    .max(200)
    .transform((text) => text.toLowerCase())
    .nullable(),
});
export type PersonElsewhere = z.infer<typeof personElsewhere>;

/** What adding a person and POST /api/people/:id/link (If-Match) answer: the link is shown this once and kept nowhere. */
export const invited = z.object({
  person: personView,
  /** path and fragment on this site, such as `/welcome#...` */
  link: z.string(),
  until: instantText,
});
export type Invited = z.infer<typeof invited>;

/** As long as a person likes, up to a size that no hand has typed. */
const password = z.string().min(1).max(1_000);

/** POST /api/session/link: sets the password the one-time link is for, and signs in. */
export const useLink = z.object({ token: z.string().min(1).max(200), password });
export type UseLink = z.infer<typeof useLink>;

/** POST /api/session/password: ends every other sign-in of the person. */
export const changePassword = z.object({ current: password, next: password });
export type ChangePassword = z.infer<typeof changePassword>;
