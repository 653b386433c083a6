import { Secret, TOTP } from 'otpauth';
import sharp from 'sharp';
import type {
  ApiTokenMade,
  BenchLists,
  BulletinDetail,
  CallbackView,
  Invited,
  PeopleList,
  PersonalData,
  PersonView,
  Published,
  Retention,
  SavedSerialScheme,
  SavedStandardEdition,
  SecondFactorBegun,
  SheetView,
  TicketView,
  UnitView,
  WebhookAdded,
  WebhookDelivery,
  WhatIf,
} from '../../libs/contracts';
import { SAFETY_POINTS } from '../../libs/ticket';
import { Caller, PASSWORD, rule, type ApiShop } from '../api/api-shop';
import { workAtShelf } from './shelf-operations';
import { ProviderBrowser } from '../api/provider';
import type { Walk } from './walk';

interface Versioned {
  readonly version: number;
}

/**
 * Every operation of the API at least once with a request that is accepted, in the order a shop would come by them.
 * A new route is called here too, or the contract spec names it.
 */
export async function everyOperation(shop: ApiShop, walk: Walk): Promise<void> {
  await readCatalogue(walk);
  await workOnTicket(shop, walk);
  await dateUnits(shop, walk);
  await publishPapers(walk);
  await callOwner(shop, walk);
  await workAtShelf(shop, walk);
  await managePeople(shop, walk);
  await forgetOwner(shop, walk);
  await runTheShop(walk);
  await bringAndTake(walk);
  await workAtBenches(walk);
}

async function workAtBenches(walk: Walk): Promise<void> {
  const { benches } = await walk.call<BenchLists>('benches-lists');
  const { id: ticket, bench } = benches.flatMap(({ tickets }) => tickets)[0]!;
  await walk.call('benches-move', { path: { id: ticket }, body: { from: bench!.id, to: bench!.id, before: null } });
  const { version: on } = benches.find(({ id }) => id === bench!.id)!;
  await walk.call('benches-change', { path: { id: bench!.id }, version: on, body: { dayMinutes: 480 } });
  await walk.call('benches-choose', { as: 'technician', body: { benchId: bench!.id } });
  await walk.call('benches-mine', { as: 'technician' });
  const money = { currency: 'EUR', tax: { name: 'VAT', basisPoints: 2_100, included: true }, hourMinor: 6_400 };
  const settled = await walk.call<Versioned>('estimates-money');
  await walk.call('estimates-change-money', { version: settled.version, body: money });
  const seen = await walk.call<TicketView>('tickets-view', { path: { id: ticket } });
  const lines = [{ kind: 'labour', what: 'Change the pin, seized', minutes: 60, minor: 6_400 }];
  const labour = { path: { id: ticket }, version: seen.version, body: { lines } };
  const { version } = await walk.call<TicketView>('tickets-set-labour', labour);
  await walk.call('estimates-write', { path: { id: ticket }, version });
  await walk.call('estimates-bookkeeping', { query: { from: '2026-11-01', to: '2026-12-01' } });
  await takePhotos(walk, ticket);
  const { unit } = seen;
  await walk.call('scan-visit', { path: { id: unit.id } });
  await walk.call('scan-read', { query: { text: '70-412B' } });
}

async function takePhotos(walk: Walk, id: number): Promise<void> {
  const photo = await sharp({ create: { width: 64, height: 48, channels: 3, background: '#70806a' } })
    .jpeg()
    .toBuffer();
  const form = new FormData();
  form.set('stage', 'inspection');
  form.set('photo', new Blob([new Uint8Array(photo)]), 'photo.jpg');
  const { photos } = await walk.call<TicketView>('photos-take', { path: { id }, form });
  const { id: photoId, name, version } = photos[0]!;
  await walk.call('photos-change', { path: { id, photoId }, version, body: { onSheet: true } });
  await walk.call('photos-full', { path: { name } });
  await walk.call('photos-thumb', { path: { name } });
  await walk.call('photos-remove', { path: { id, photoId }, version: version + 1, body: { reason: 'shows a person' } });
}

async function readCatalogue(walk: Walk): Promise<void> {
  for (const id of ['catalogue-benches', 'catalogue-lines', 'rulebook-overview']) await walk.call(id);
  await walk.call('catalogue-line', { path: { code: 'SNOW-2' } });
  const [pin] = await walk.call<{ id: number }[]>('catalogue-parts', { query: { q: '70-4' } });
  const number = '16291041500210';
  await walk.call('catalogue-add-trade-number', { path: { id: pin!.id }, body: { number, pack: 10 } });
  await walk.call('catalogue-remove-trade-number', { path: { id: pin!.id, number } });
  await walk.call('rulebook-rules', { query: { line: 'SNOW-2' } });
  await walk.call('rulebook-findings', { query: { knownOn: '2009-12-31' } });
  await walk.call('rulebook-wall-chart', { path: { line: 'SNOW-2' } });
  const unit = { lineCode: 'SNOW-2', modelNumber: 'S2', serial: '17030001' };
  await walk.call('board-look-up', { body: unit });
}

async function workOnTicket(shop: ApiShop, walk: Walk): Promise<void> {
  const opened = await walk.call<TicketView>('tickets-open', {
    as: 'counter',
    body: {
      owner: { name: 'Ole Brand', phone: '555 0101', consent: true },
      unit: { lineCode: 'SNOW-2', modelNumber: 'S2', serial: '17030001', serialAbsent: null, plate: 'SNOW-2' },
      complaint: 'Auger does not turn',
      promisedOn: '2026-11-27',
    },
  });
  const { id } = opened;
  let { version } = opened;
  const act = async (operation: string, body: unknown, more: Record<string, number> = {}, as?: 'manager') => {
    const at = { path: { id, ...more }, version, body, as: as ?? ('technician' as const) };
    const ticket = await walk.call<TicketView>(operation, at);
    version = ticket.version;
    return ticket;
  };
  await act('tickets-change-tag', { complaint: 'Auger does not turn, pin sheared', benchId: 1 });
  await act('tickets-hold', { reason: 'waiting for the owner' });
  await act('tickets-hold', { reason: null });
  await act('tickets-move-stage', { to: 'inspection' });
  const seen = { headMarks: null, diameterMm: 8, lengthMm: 50, grooved: null, finish: null };
  await walk.call('tickets-tell', { path: { id }, body: { position: 'AUG-PIN', marks: seen }, as: 'technician' });
  const places = [
    { position: 'AUG-PIN', place: 1, condition: 'sheared' },
    { position: 'AUG-PIN', place: 2, partText: '70-412A', condition: 'sound' },
    { position: 'BELT', place: 1, partText: '80-002', condition: 'worn' },
  ];
  await act('tickets-record-places', { side: 'found', places });
  await walk.call('tickets-explain', { path: { id, position: 'AUG-PIN', place: 2 }, query: { side: 'found' } });
  await act('tickets-set-labour', { lines: [{ kind: 'labour', what: 'Change the pin', minutes: 40, minor: 3_000 }] });
  await act('tickets-authorise', { by: 'Ole Brand', how: 'phone', amountMinor: 5_000 });
  await act('tickets-tick-safety', { checks: SAFETY_POINTS.slice(0, 2).map((point) => point.id) });
  await act('tickets-move-stage', { to: 'parts-selection' });
  await act('tickets-pick-part', { position: 'BELT', partText: '80-001', quantity: 1, purpose: 'fit' });
  const { picks } = await walk.call<TicketView>('tickets-view', { path: { id } });
  await act('tickets-return-part', undefined, { pickId: picks[0]!.id });
  await walk.call('board-board', { query: { q: 'Ole' } });
  await walk.call('board-search', { query: { q: '17030001' } });
  const [flag] = await walk.call<{ id: number; version: number }[]>('flags-list', { query: { state: 'open' } });
  const decision = { decision: 'accept', reason: 'owner waits for the new pin', until: '2026-12-01' };
  await walk.call('flags-decide', { path: { id: flag!.id }, version: flag!.version, body: decision });
  const other = await shop.newTicket('17030099');
  const reason = { reason: 'owner sold it' };
  await walk.call('tickets-cancel', { path: { id: other.id }, version: other.version, body: reason });
}

async function dateUnits(shop: ApiShop, walk: Walk): Promise<void> {
  const { unit } = await shop.newTicket(null, { serialAbsent: 'plate gone' });
  const at = { path: { id: unit.id } };
  const evidence = { kind: 'printed-date', date: '2017-03' };
  const dated = await walk.call<UnitView>('units-add-evidence', { ...at, version: unit.version, body: { evidence } });
  const piece = dated.buildDates.evidence.find(({ kind }) => kind === 'printed-date')!;
  const without = await walk.call<UnitView>('units-set-aside', {
    path: { id: unit.id, evidenceId: piece.id },
    version: dated.version,
    body: { reason: 'that plate is from another unit' },
  });
  const identity = { lineCode: 'SNOW-2', modelNumber: 'S2W', serial: '16110007', serialAbsent: null };
  const identified = await walk.call<UnitView>('units-identify', { ...at, version: without.version, body: identity });
  await walk.call('units-trail', at);
  const noted = await shop.pool.query<{ id: number }>(
    `INSERT INTO unit_note (unit_id, source_id, position_id, place, detail)
     VALUES ($1, 1, 1, 1, '{"sentence":"Change the pin at the next service."}') RETURNING id`,
    [unit.id],
  );
  const settled = await walk.call<UnitView>('units-settle-note', {
    path: { id: unit.id, noteId: noted.rows[0]!.id },
    version: identified.version,
    body: { reason: 'new pin fitted by the owner' },
  });
  const warranty = { boughtOn: '2025-10-31', months: 24 };
  await walk.call('units-warranty', { ...at, version: settled.version, body: { warranty } });

  await walk.call('serial-schemes-list');
  const fields = [{ kind: 'year-digit' }, { kind: 'month-number' }, { kind: 'sequence', length: 3 }];
  const scheme = {
    maker: 'HOLM',
    name: 'year digit',
    lines: [],
    validFrom: '2012-01-01',
    validTo: '2014-01-01',
    fields,
  };
  await walk.call('serial-schemes-try', { body: { scheme, serial: '303001' } });
  const { saved } = await walk.call<SavedSerialScheme>('serial-schemes-add', { body: { scheme } });
  const later = { scheme: { ...scheme, validTo: '2013-01-01' } };
  await walk.call('serial-schemes-change', { path: { id: saved.id }, version: saved.version, body: later });
  await walk.call('standard-editions-list');
  const edition = { standard: 'HOUSE 1', edition: '2015', approved: '2015-03-02', source: 'title page' };
  const kept = await walk.call<SavedStandardEdition>('standard-editions-add', { body: { edition } });
  await walk.call('standard-editions-change', {
    path: { id: kept.saved.id },
    version: kept.saved.version,
    body: { edition: { ...edition, approved: '2015-03-03' } },
  });
}

async function publishPapers(walk: Walk): Promise<void> {
  const body = {
    ...{ kind: 'service-bulletin', publisher: 'Holmgard', number: 'SB-9', title: 'Belt of the second kind' },
    ...{ issued: '2026-10-01', received: '2026-10-20' },
    draft: { opens: [rule('BELT-2', { positions: ['BELT'], required: 'HOLM/80002' })], ends: [] },
  };
  const { id, version } = await walk.call<BulletinDetail>('bulletins-save', { body });
  const changed = { path: { id }, version, body: { ...body, summary: 'The belt of the first kind slips.' } };
  const draft = await walk.call<BulletinDetail>('bulletins-change', changed);
  const seen = await walk.call<WhatIf>('bulletins-what-if', { path: { id } });
  const asked = { path: { id }, version: draft.version, body: { whatIfRevision: seen.revision } };
  const published = await walk.call<Published>('bulletins-publish', asked);
  await walk.call('bulletins-list');
  await walk.call('bulletins-view', { path: { id } });
  const back = { path: { id }, version: published.bulletin.version, body: { reason: 'printed in error' } };
  await walk.call('bulletins-withdraw', back);
  const ordered = await walk.call<{ id: number }>('rechecks-order');
  await walk.call('rechecks-list');
  await walk.call('rechecks-view', { path: { id: ordered.id } });
}

async function callOwner(shop: ApiShop, walk: Walk): Promise<void> {
  const { unit } = await shop.newTicket('17030055');
  const { owner } = unit;
  const { rows } = await shop.pool.query<{ id: number }>(
    'INSERT INTO callback (unit_id, owner_id) VALUES ($1, $2) RETURNING id',
    [unit.id, owner.id],
  );
  const path = { id: rows[0]!.id };
  await walk.call('owners-search', { query: { q: 'Ole' } });
  await walk.call('owners-units', { path: { id: owner.id } });
  await walk.call('owners-change', { path: { id: owner.id }, version: owner.version, body: { phone: '555 0102' } });
  for (const state of ['open', 'booked', 'settled', 'withdrawn', 'closed']) {
    await walk.call('callbacks-list', { query: { state } });
  }
  const call = await walk.call<CallbackView>('callbacks-view', { path });
  const attempt = { how: 'phone', outcome: 'no-answer', note: 'again in the evening' };
  await walk.call('callbacks-attempt', { path, version: call.version, body: attempt });
  await walk.call('letters-list', { query: { state: 'due' } });
  await writeToOwner(shop, walk, path.id, owner.id);
  const { version } = await walk.call<CallbackView>('callbacks-view', { path });
  const settled = { outcome: 'part-sent', reason: 'pin sent by post' };
  await walk.call('callbacks-settle', { path, version, body: settled });
}

async function writeToOwner(shop: ApiShop, walk: Walk, callbackId: number, ownerId: number): Promise<void> {
  await shop.pool.query(`UPDATE owner SET address = '1 Elm Road', email = 'ole@mail.example' WHERE id = $1`, [ownerId]);
  const body = { ids: [callbackId], nextOn: null };
  const { batch } = await walk.call<{ batch: string }>('letters-write', { body });
  await walk.call('letters-letters', { path: { batch } });
  await walk.call('letters-labels', { path: { batch } });
  await walk.call('letters-mail', { body });
}

async function managePeople(shop: ApiShop, walk: Walk): Promise<void> {
  const administrator = { as: 'administrator' as const };
  await walk.call('people-list', administrator);
  const body = { login: 'nils', name: 'Nils Aker', role: 'counter', locationId: 1 };
  const { person } = await walk.call<Invited>('people-add', { ...administrator, body });
  const path = { id: person.id };
  const named = { ...administrator, path, version: person.version, body: { name: 'Nils Aaker' } };
  const { version } = await walk.call<PersonView>('people-change', named);
  const { link } = await walk.call<Invited>('people-link', { ...administrator, path, version });
  const next = 'birch stove lantern path';
  const token = link.split('#')[1]!;
  await walk.call('session-use-link', { as: shop.anonymous(), body: { token, password: next } });
  await walk.call('session-sign-in', { as: shop.anonymous(), body: { login: 'nils', password: next } });
  const nils = await signedIn(shop, 'nils', next);
  await walk.call('session-change-password', { as: nils, body: { current: next, next: 'kettle harbour seven oak' } });
  await secondFactor(shop, walk, nils, 'kettle harbour seven oak');
  await walk.call('people-reset-second-factor', {
    ...administrator,
    path,
    version: await versionOfPerson(walk, person.id),
  });
  const again = await signedIn(shop, 'nils', 'kettle harbour seven oak');
  await walk.call('session-sign-out-everywhere', { as: again });
  await walk.call('session-who-am-i', administrator);
  const reading = { manner: 'en-US' as const, torque: 'lbf·ft' as const, length: 'in' as const };
  await walk.call('session-read', { ...administrator, body: { reading } });
  const draft = {
    ...{ ownerId: null, ownerName: '', unitId: null, unitName: '', benchId: null, promisedOn: null },
    owner: { name: 'Ole Brand', phone: '555 0101', email: '', address: '', consent: true },
    unit: { lineCode: 'SNOW-2', modelNumber: null, serial: '1605', serialAbsent: null, options: {}, plate: '' },
    complaint: 'Auger does not',
  };
  await walk.call('session-keep-draft', { ...administrator, body: { draft } });
  await walk.call('session-draft', administrator);
  await walk.call('session-demo-people', { as: shop.anonymous() });
  await signInElsewhere(shop, walk, path);
  await walk.call('session-sign-out', { as: await signedIn(shop, 'technician', PASSWORD) });
  await letProgramsIn(shop, walk);
}

async function letProgramsIn(shop: ApiShop, walk: Walk): Promise<void> {
  const body = { name: 'Ledger bridge', scopes: ['take-out', 'read-tickets'], days: 90 };
  const { made } = await walk.call<ApiTokenMade>('api-tokens-make', { body });
  await walk.call('api-tokens-list');
  await walk.call('api-tokens-revoke', { path: { id: made.id } });
  const as = 'administrator' as const;
  // Nothing is posted: there is no worker here, and the name is one that leads nowhere (RFC 2606).
  const told = { url: 'https://ledger.example/revright', events: ['flag.raised', 'callback.opened'] };
  const { webhook } = await walk.call<WebhookAdded>('webhooks-add', { as, body: told });
  const path = { id: webhook.id };
  await walk.call('webhooks-change', { as, path, version: webhook.version, body: { events: ['callback.opened'] } });
  await walk.call('webhooks-renew-secret', { as, path, version: webhook.version + 1 });
  const [{ id: deliveryId }] = await walk.call<[WebhookDelivery]>('webhooks-try-out', { as, path });
  await shop.pool.query(`UPDATE webhook_delivery SET state = 'set-aside' WHERE id = $1`, [deliveryId]);
  await walk.call('webhooks-deliveries', { as, path });
  await walk.call('webhooks-again', { as, path: { ...path, deliveryId } });
  await walk.call('webhooks-list', { as });
  await walk.call('webhooks-remove', { as, path });
}

async function versionOfPerson(walk: Walk, id: number): Promise<number> {
  const { people } = await walk.call<PeopleList>('people-list', { as: 'administrator' });
  return people.find((person) => person.id === id)!.version;
}

async function secondFactor(shop: ApiShop, walk: Walk, as: Caller, password: string): Promise<void> {
  let secret = '';
  const code = () => {
    shop.clock.nowMs += 30_000;
    return new TOTP({ secret: Secret.fromBase32(secret) }).generate({ timestamp: shop.clock.nowMs });
  };
  const setUp = async () => {
    ({ secret } = await walk.call<SecondFactorBegun>('second-factor-begin', { as, body: { password } }));
    await walk.call('second-factor-turn-on', { as, body: { code: code() } });
  };
  await setUp();
  await walk.call('second-factor-view', { as });
  await walk.call('second-factor-recovery', { as, body: { code: code() } });
  const { headers } = await shop.signIn('nils', password);
  const half = new Caller(shop.api.url, cookieIn(headers, 'revright-step'));
  await walk.call('second-factor-sign-in', { as: half, body: { code: code() } });
  await walk.call('second-factor-turn-off', { as, body: { password, code: code() } });
  await setUp();
}

async function signInElsewhere(shop: ApiShop, walk: Walk, path: { id: number }): Promise<void> {
  const email = 'nils@shop.example';
  const version = await versionOfPerson(walk, path.id);
  await walk.call('people-elsewhere', { as: 'administrator', path, version, body: { email } });
  await walk.call('elsewhere-offered', { as: shop.anonymous() });
  await walk.call('elsewhere-begin', { as: shop.anonymous() });
  const begun = await shop.anonymous().ask<{ address: string }>('POST', '/session/elsewhere');
  const away = new Caller(shop.api.url, cookieIn(begun.headers, 'revright-elsewhere'));
  const { search } = await new ProviderBrowser().signIn(begun.body.address, 'nils', shop.api.url);
  await walk.call('elsewhere-back', { as: away, body: { query: search } });
}

async function forgetOwner(shop: ApiShop, walk: Walk): Promise<void> {
  const { id, version, owner } = await shop.newTicket('17030095');
  await walk.call('tickets-cancel', { path: { id }, version, body: { reason: 'owner sold it' } });
  const at = { path: { id: owner.id } };
  const kept = await walk.call<PersonalData>('personal-data-export', at);
  const reason = { reason: 'asked for by letter' };
  await walk.call('personal-data-erase', { ...at, version: kept.owner.version, body: reason });
  const settled = await walk.call<Retention>('personal-data-view', { query: { years: 5 } });
  await walk.call('personal-data-settle', { version: settled.version, body: { years: 10 } });
}

async function runTheShop(walk: Walk): Promise<void> {
  const administrator = { as: 'administrator' as const };
  await walk.call('figures-view', { query: { from: '2026-01-01', to: '2026-12-01' } });
  const { version, ...prints } = await walk.call<Versioned>('print-settings-view');
  await walk.call('print-settings-change', { version, body: prints });
  await walk.call('sheet-sheet', { path: { id: 1 } });
  const shopSettings = await walk.call<Versioned>('settings-view');
  const { version: on, ...rules } = await walk.call<Versioned>('sign-in-rules-view', administrator);
  await walk.call('sign-in-rules-change', { ...administrator, version: on, body: rules });
  await walk.call('settings-change', { version: shopSettings.version, body: { lookBackMonths: 24 } });
  await walk.call('mail-server-set-up');
  const mail = await walk.call<Versioned>('mail-server-view', administrator);
  await walk.call('mail-server-settle', { ...administrator, version: mail.version, body: { server: MAIL_SERVER } });
  await walk.call('mail-server-try-out', { ...administrator, body: { to: 'shop@example.org' } });
  for (const id of ['health-health', 'health-ready', 'metrics-view', 'description-describe', 'description-reader']) {
    await walk.call(id, administrator);
  }
  await walk.call('description-file', { ...administrator, path: { file: 'start.js' } });
}

async function signedIn(shop: ApiShop, login: string, password: string): Promise<Caller> {
  const { headers } = await shop.signIn(login, password);
  return new Caller(shop.api.url, cookieIn(headers, 'revright'));
}

const MAIL_SERVER = {
  host: 'localhost',
  port: 587,
  security: 'starttls',
  login: 'shop',
  password: 'of the mail server',
  senderName: 'Mill Repairs',
  senderAddress: 'shop@example.org',
};

const cookieIn = (headers: Headers, name: string): string =>
  headers
    .getSetCookie()
    .find((cookie) => cookie.startsWith(`${name}=`))!
    .split(';')[0]!;

async function bringAndTake(walk: Walk): Promise<void> {
  const text = 'Maker,Part number,Name,Price\r\nHOLM,90-100,Drive belt,12.50\r\nHOLM,1.23E+11,Bolt,0.50\r\n';
  const file = { name: 'parts.csv', text };
  const { id, version, mapping } = await walk.call<SheetView>('sheets-bring', { query: { kind: 'parts' }, file });
  await walk.call('sheets-view', { path: { id } });
  const body = { mapping, dayOrder: null, publish: false };
  const looked = await walk.call<SheetView>('sheets-look', { path: { id }, version, body });
  await walk.call('sheets-rejected', { path: { id } });
  await walk.call('sheets-import', { path: { id }, version: looked.version, body: { leaveOutRejected: true } });
  await walk.call('sheets-drop', { path: { id } });
  await walk.call('exports-template', { path: { kind: 'parts' }, query: { format: 'xlsx' } });
  await walk.call('exports-export', { path: { kind: 'owners' } });
  const rulebook = await walk.call<object>('rulebook-file-export');
  await walk.call('rulebook-file-import', {
    query: { dryRun: 'true' },
    file: { name: 'rulebook.json', text: JSON.stringify(rulebook) },
  });
}
