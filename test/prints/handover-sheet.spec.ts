import { writeFileSync } from 'node:fs';
import sharp from 'sharp';
import type { PhotoView, PrintSettings, TicketView } from '../../libs/contracts';
import { SAFETY_POINTS } from '../../libs/ticket';
import { withDatabase } from '../../libs/testing';
import { ApiShop } from '../api/api-shop';
import { readPdf } from './read-pdf';

const db = withDatabase();
let shop: ApiShop;
let ticket: TicketView;

const PRINTS: PrintSettings = {
  shopName: 'Łódź & Söner Repairs',
  address: '1 Mill Lane',
  phone: '555 0100',
  email: '',
  paper: 'A4',
  labels: 'a4-3x8',
  manner: 'en-GB',
  torque: 'N·m',
  length: 'mm',
};

async function pdf(id = ticket.id, role: 'technician' | 'manager' = 'technician') {
  const { cookie } = await shop.as(role);
  const response = await fetch(`${shop.api.url}/api/tickets/${id}/sheet.pdf`, { headers: { cookie } });
  return { response, bytes: new Uint8Array(await response.arrayBuffer()) };
}

/** A unit of March 2017 with a sheared pin: found, fitted, with a spare, and ready to be handed over. */
async function repaired(): Promise<TicketView> {
  const technician = await shop.as('technician');
  let now = await shop.newTicket('17030042');
  const act = async (method: string, path: string, body: unknown) => {
    const answer = await technician.change(method, `/tickets/${now.id}${path}`, now.version, body);
    if (answer.status !== 200) throw new Error(JSON.stringify(answer.body));
    now = answer.body;
  };
  const places = (one: object, more: object) => [
    { position: 'AUG-PIN', place: 1, ...one },
    { position: 'AUG-PIN', place: 2, ...more },
    { position: 'BELT', place: 1, partText: '80-002', condition: 'worn' },
  ];
  await act('POST', '/stage', { to: 'inspection' });
  const found = places({ condition: 'sheared', partText: '70-499' }, { partText: '70-412B', condition: 'sound' });
  await act('PUT', '/places', { side: 'found', places: found });
  await act('POST', '/stage', { to: 'parts-selection' });
  await act('POST', '/picks', { position: 'AUG-PIN', partText: '70-412B', quantity: 1, purpose: 'fit' });
  await act('POST', '/picks', { position: 'AUG-PIN', partText: '70-412B', quantity: 2, purpose: 'spare' });
  await act('PUT', '/safety', { checks: SAFETY_POINTS.map(({ id }) => id) });
  return now;
}

beforeAll(async () => {
  shop = await ApiShop.open(db);
  const manager = await shop.as('manager');
  expect((await manager.settle('PUT', '/settings/prints', PRINTS)).status).toBe(200);
  ticket = await repaired();
}, 300_000);

describe('the handover sheet as a file', () => {
  it('opens in a reader and says what was found, why, the spares, the cautions and the word on being called', async () => {
    const { response, bytes } = await pdf();
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toBe('application/pdf');
    expect(response.headers.get('content-disposition')).toBe(`inline; filename="handover-${ticket.number}.pdf"`);
    if (process.env['KEEP_PRINTS']) writeFileSync(`${process.env['KEEP_PRINTS']}/sheet.pdf`, bytes);
    const { title, pages } = readPdf(bytes);
    expect(title).toBe(`Handover sheet ${ticket.number}`);
    expect(pages).toHaveLength(1);
    const { text } = pages[0]!;
    for (const words of [
      ticket.number,
      'Ole Brand',
      'Łódź & Söner Repairs',
      'Holmgard Snow thrower 2 S2, serial 17030042. ',
      'You told us: Auger does not turn',
      'Auger pin, left 70-499, sheared as it was',
      'Spares handed to you',
      '2 × 70-412B Auger pin, late',
      'Never fit a stronger fastener than the one required',
      'take the key or the plug lead off',
      'You agreed that we call you',
      'Received by',
      '1 of 1',
    ])
      expect(text).toContain(words);
    const why = ticket.places.find(({ placeName }) => placeName === 'left')!.found!.verdict!.ownerSentence;
    expect(text.replace(/- /g, '-')).toContain(why.replace(/- /g, '-'));
  });

  it.each([
    ['A4', 210, 297],
    ['Letter', 215.9, 279.4],
  ] as const)('is on %s where the shop says so', async (paper, width, height) => {
    await (await shop.as('manager')).settle('PUT', '/settings/prints', { ...PRINTS, paper });
    const [page] = readPdf((await pdf()).bytes).pages;
    expect(page!.width).toBeCloseTo(width, 0);
    expect(page!.height).toBeCloseTo(height, 0);
    for (const { x, y } of page!.items) {
      expect(x).toBeGreaterThan(15);
      expect(x).toBeLessThan(width - 15);
      expect(y).toBeGreaterThan(15);
      expect(y).toBeLessThan(height - 5);
    }
  });

  it('is made for nobody of another location', async () => {
    await db.pool.query('UPDATE ticket SET location_id = 2 WHERE id = $1', [ticket.id]);
    expect((await pdf()).response.status).toBe(404);
    expect((await pdf(ticket.id, 'manager')).response.status).toBe(200);
    await db.pool.query('UPDATE ticket SET location_id = 1 WHERE id = $1', [ticket.id]);
  });
});

describe('photos on the sheet', () => {
  /** A photo of so many points, taken as somebody at the bench does. */
  async function taken(words: { position?: string; place?: string; caption: string }, width: number, height: number) {
    const form = new FormData();
    for (const [name, value] of Object.entries({ ...words, stage: 'inspection' })) form.set(name, value);
    const file = await sharp({ create: { width, height, channels: 3, background: '#a23f00' } })
      .jpeg()
      .toBuffer();
    form.set('photo', new Blob([new Uint8Array(file)], { type: 'image/jpeg' }), 'a.jpg');
    const sent = await (await shop.as('technician')).send(`/tickets/${ticket.id}/photos`, form);
    expect(sent.status).toBe(200);
    return sent.body.photos.at(-1)!;
  }

  /** The photo as it is afterwards. */
  async function choose({ id, version }: PhotoView, onSheet: boolean): Promise<PhotoView> {
    const technician = await shop.as('technician');
    const { status, body } = await technician.change('PATCH', `/tickets/${ticket.id}/photos/${id}`, version, {
      onSheet,
    });
    expect(status).toBe(200);
    return body.photos.find((one) => one.id === id)!;
  }

  it('are those that were chosen, whole and scaled, under the place they belong to', async () => {
    await (await shop.as('manager')).settle('PUT', '/settings/prints', PRINTS);
    const pin = await taken({ position: 'AUG-PIN', place: '1', caption: 'sheared through' }, 1_600, 1_000);
    const unit = await taken({ caption: 'hood dented' }, 600, 900);
    await taken({ position: 'BELT', place: '1', caption: 'not for the owner' }, 400, 300);
    const images = async () => readPdf((await pdf()).bytes).pages.flatMap((page) => page.images);
    expect(await images()).toEqual([]);
    const chosenPin = await choose(pin, true);
    const chosenUnit = await choose(unit, true);
    const { bytes } = await pdf();
    if (process.env['KEEP_PRINTS']) writeFileSync(`${process.env['KEEP_PRINTS']}/sheet-photos.pdf`, bytes);
    const [page] = readPdf(bytes).pages;
    expect(page!.text).toContain('Auger pin, left, at inspection: sheared through');
    expect(page!.text).toContain('The unit, at inspection: hood dented');
    expect(page!.text).not.toContain('not for the owner');
    const [first, second, ...more] = page!.images;
    expect(more).toEqual([]);
    expect([first!.width, first!.height]).toEqual([expect.closeTo(80, 0), expect.closeTo(50, 0)]);
    expect([second!.width, second!.height]).toEqual([expect.closeTo(46.7, 0), expect.closeTo(70, 0)]);
    const y = (words: string) => page!.items.find(({ text }) => text.includes(words))!.y;
    expect(first!.y).toBeGreaterThan(y('70-499'));
    expect(first!.y + first!.height).toBeLessThan(y('through'));
    expect(y('through')).toBeLessThan(y('Spares'));
    await choose(chosenPin, false);
    expect(await images()).toHaveLength(1);
    await choose(chosenUnit, false);
  });
});

describe('the settings of prints', () => {
  it('are read by everybody and changed by a manager or an administrator', async () => {
    expect((await (await shop.as('technician')).get<PrintSettings>('/settings/prints')).body.shopName).toBe(
      PRINTS.shopName,
    );
    expect((await (await shop.as('counter')).ask('PUT', '/settings/prints', PRINTS)).status).toBe(403);
    const refused = await (await shop.as('manager')).settle('PUT', '/settings/prints', { ...PRINTS, paper: 'A5' });
    expect(refused.status).toBe(400);
  });
});
