import { createHash } from 'node:crypto';
import { connect, type Socket } from 'node:net';
import sharp from 'sharp';
import { MOST_PHOTO_BYTES, type Problem, type TicketView } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, type Caller } from '../api/api-shop';

const db = withDatabase();
let shop: ApiShop;
let technician: Caller;
let ticket: TicketView;

beforeAll(async () => {
  shop = await ApiShop.open(db);
  technician = await shop.as('technician');
  ticket = await shop.newTicket('18020001');
}, 300_000);

const picture = (width = 640, height = 480) =>
  sharp({ create: { width, height, channels: 3, background: { r: 90, g: 120, b: 60 } } });
const jpeg = () => picture().jpeg().toBuffer();

interface Sent {
  status: number;
  body: TicketView & Problem;
}

async function send(
  file: Uint8Array,
  more: { name?: string; fields?: Record<string, string>; as?: Caller } = {},
): Promise<Sent> {
  const form = new FormData();
  for (const [name, value] of Object.entries({ stage: 'intake', ...more.fields })) form.set(name, value);
  form.set('photo', new Blob([new Uint8Array(file)], { type: 'image/jpeg' }), more.name ?? 'a.jpg');
  const answer = await fetch(`${shop.api.url}/api/tickets/${ticket.id}/photos`, {
    method: 'POST',
    headers: { cookie: (more.as ?? technician).cookie },
    body: form,
  });
  return { status: answer.status, body: (await answer.json()) as TicketView & Problem };
}
const fetchPhoto = (path: string, cookie = technician.cookie) =>
  fetch(`${shop.api.url}/api/photos/${path}`, { headers: { cookie } });
const photosKept = async () => (await db.pool.query('SELECT FROM photo')).rowCount;

describe('33: a file that is sent', () => {
  it('is taken when it is a picture, made anew and served so that nothing in it can run', async () => {
    const sent = await picture(3_000, 2_000).png().toBuffer();
    const { status, body } = await send(sent, {
      fields: { stage: 'inspection', position: 'AUG-PIN', place: '2', caption: 'sheared' },
    });
    expect(status).toBe(200);
    const [photo] = body.photos;
    expect(photo).toMatchObject({ stage: 'inspection', position: 'AUG-PIN', place: 2, caption: 'sheared' });
    expect([photo!.width, photo!.height, photo!.onSheet]).toEqual([1_600, 1_067, false]);
    const full = await fetchPhoto(photo!.name);
    expect(Object.fromEntries(full.headers)).toMatchObject({
      'content-type': 'image/jpeg',
      'content-disposition': `attachment; filename="${photo!.name}.jpg"`,
      'x-content-type-options': 'nosniff',
      'content-security-policy': "default-src 'none'; sandbox",
    });
    const bytes = Buffer.from(await full.arrayBuffer());
    expect(createHash('sha256').update(bytes).digest('hex')).toBe(photo!.sha256);
    expect((await sharp(bytes).metadata()).format).toBe('jpeg');
    const thumb = Buffer.from(await (await fetchPhoto(`${photo!.name}/thumb`)).arrayBuffer());
    expect((await sharp(thumb).metadata()).width).toBe(320);
    const kept = await db.pool.query<{ sent_sha256: string }>('SELECT sent_sha256 FROM photo WHERE id = $1', [
      photo!.id,
    ]);
    expect(kept.rows[0]!.sent_sha256).toBe(createHash('sha256').update(sent).digest('hex'));
    expect(body.history.at(-1)!.sentence).toBe('Photo taken at inspection: sheared.');
  });

  it('loses where and by what it was taken, and is turned the right way up first', async () => {
    const withPlace = await picture(400, 200)
      .withMetadata({ orientation: 6 })
      .withExif({
        IFD0: { Make: 'Some camera', Copyright: 'Ole Brand' },
        IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1', GPSLongitudeRef: 'E', GPSLongitude: '4/1 0/1 0/1' },
      })
      .jpeg()
      .toBuffer();
    expect(withPlace.includes('Some camera')).toBe(true);
    expect((await sharp(withPlace).metadata()).exif).toBeDefined();
    const photo = (await send(withPlace)).body.photos.at(-1)!;
    for (const path of [photo.name, `${photo.name}/thumb`]) {
      const bytes = Buffer.from(await (await fetchPhoto(path)).arrayBuffer());
      const { exif, xmp, iptc, orientation } = await sharp(bytes).metadata();
      expect([exif, xmp, iptc, orientation]).toEqual([undefined, undefined, undefined, undefined]);
      expect(bytes.includes('Some camera') || bytes.includes('Ole Brand')).toBe(false);
    }
  });

  it.each<[string, () => Promise<Uint8Array> | Uint8Array, RegExp]>([
    ['a drawing', () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>'), /no picture/],
    ['a page', () => Buffer.from('<!doctype html><script>alert(1)</script>'), /no picture/],
    ['an archive', () => Buffer.from('PK\x03\x04 and the rest', 'latin1'), /no picture/],
    ['a program', () => Buffer.from('\x7fELF\x02\x01\x01', 'latin1'), /no picture/],
    ['an animation', () => picture(8, 8).gif().toBuffer(), /no picture/],
    ['a picture with an archive behind it', async () => Buffer.concat([await jpeg(), emptyZip('')]), /something else/],
    ['the same with a comment', async () => Buffer.concat([await jpeg(), emptyZip('hello')]), /something else/],
    ['a picture with a page in it', async () => commented(await jpeg(), '<script>alert(1)</script>'), /something else/],
    ['a picture with a drawing in it', async () => commented(await jpeg(), '<SVG onload=x>'), /something else/],
    ['a picture with a document in it', async () => commented(await jpeg(), '%PDF-1.7'), /something else/],
    ['a picture cut off', async () => (await picture().png().toBuffer()).subarray(0, 200), /cannot be read/],
    ['the first bytes of one', () => Buffer.from([0xff, 0xd8, 0xff, 0xe0]), /cannot be read/],
  ])('is refused when it is %s, and nothing is kept', async (_what, make, why) => {
    const before = await photosKept();
    const { status, body } = await send(await make());
    expect([status, body.field]).toEqual([400, 'photo']);
    expect(body.detail).toMatch(why);
    expect(await photosKept()).toBe(before);
  });

  it('is taken from a telephone that puts a film behind its picture, without the film', async () => {
    const film = Buffer.concat([
      await jpeg(),
      Buffer.from('\x00\x00\x00\x18ftypmp42', 'latin1'),
      Buffer.alloc(4_000, 7),
    ]);
    const { status, body } = await send(film);
    expect(status).toBe(200);
    const kept = Buffer.from(await (await fetchPhoto(body.photos.at(-1)!.name)).arrayBuffer());
    expect(kept.includes('ftypmp42')).toBe(false);
  });

  it('may be as large as is said, and not a byte larger', async () => {
    const whole = Buffer.concat([await jpeg(), Buffer.alloc(MOST_PHOTO_BYTES)]).subarray(0, MOST_PHOTO_BYTES);
    expect((await send(whole)).status).toBe(200);
    const { status, body } = await send(Buffer.concat([whole, Buffer.from([0])]));
    expect([status, body.type]).toEqual([413, 'too-large']);
  }, 60_000);

  it('has no more points than are said: 10,000 by 10,000 in one small file is refused unread', async () => {
    const huge = await picture(10_000, 10_000).png().toBuffer();
    expect(huge.length).toBeLessThan(MOST_PHOTO_BYTES);
    const { status, body } = await send(huge);
    expect([status, body.detail]).toEqual([400, 'The picture is too large; accepted are at most 64 million points.']);
  }, 60_000);

  it.each(['shell.php.jpg', '../../../etc/passwd', 'x.jpg\u0000.html', 'a".svg', '..\\..\\boot.ini'])(
    'gets a name of ours, whatever it is called: %j',
    async (name) => {
      const { status, body } = await send(await jpeg(), { name });
      expect(status).toBe(200);
      expect(body.photos.at(-1)!.name).toMatch(/^[0-9a-f]{32}$/);
      expect(JSON.stringify(body)).not.toContain('passwd');
    },
  );

  it.each([
    ['no stage of a photo', { stage: 'repair' }, 'stage'],
    ['a position the unit has not', { position: 'NOPE' }, 'position'],
    ['a place the position has not', { position: 'BELT', place: '2' }, 'place'],
  ])('is refused with %s', async (_what, fields, field) => {
    const { status, body } = await send(await jpeg(), { fields });
    expect([status, body.field]).toEqual([400, field]);
  });

  it('comes as multipart, one at a time', async () => {
    const plain = await technician.ask<Problem>('POST', `/tickets/${ticket.id}/photos`, { stage: 'intake' });
    expect([plain.status, plain.body.type]).toEqual([415, 'not-multipart']);
    const form = new FormData();
    form.set('stage', 'intake');
    for (const name of ['photo', 'more']) form.set(name, new Blob([new Uint8Array(await jpeg())]), 'a.jpg');
    const two = await fetch(`${shop.api.url}/api/tickets/${ticket.id}/photos`, {
      method: 'POST',
      headers: { cookie: technician.cookie },
      body: form,
    });
    expect(two.status).toBe(413);
    const broken = await fetch(`${shop.api.url}/api/tickets/${ticket.id}/photos`, {
      method: 'POST',
      headers: { cookie: technician.cookie, 'content-type': 'multipart/form-data; boundary=x' },
      body: '--x\r\ncontent-disposition: form-data; name="photo"; filename="a"\r\n\r\nabc',
    });
    expect(broken.status).toBe(400);
  });

  it('is seen by nobody from another location, and by nobody without a name that is right', async () => {
    const { body } = await send(await jpeg());
    const { name } = body.photos.at(-1)!;
    await db.pool.query(`UPDATE person SET location_id = 2 WHERE login = 'counter'`);
    expect((await fetchPhoto(name, (await shop.as('counter')).cookie)).status).toBe(404);
    expect((await send(await jpeg(), { as: await shop.as('counter') })).status).toBe(404);
    await db.pool.query(`UPDATE person SET location_id = 1 WHERE login = 'counter'`);
    expect((await fetchPhoto(name, '')).status).toBe(401);
    expect((await fetchPhoto(`${name.slice(1)}0`)).status).toBe(404);
    expect((await fetchPhoto('..%2f..%2fetc%2fpasswd')).status).toBe(404);
  });
});

describe('a photo', () => {
  it('is chosen for the sheet, and taken away with a reason: the pictures go, that there was one stays', async () => {
    const sent = await send(await jpeg());
    const photo = sent.body.photos.at(-1)!;
    const path = `/tickets/${ticket.id}/photos/${photo.id}`;
    const chosen = await technician.change('PATCH', path, photo.version, { onSheet: true, caption: 'Left side' });
    expect(chosen.body.photos.at(-1)).toMatchObject({ onSheet: true, caption: 'Left side' });
    const absent = `/tickets/${ticket.id}/photos/999999`;
    expect((await technician.change('PATCH', absent, 1, { onSheet: true })).status).toBe(404);
    const late = await technician.change('POST', `${path}/remove`, photo.version, { reason: 'shows a person' });
    expect(late.status).toBe(412);
    const { status, body } = await technician.change('POST', `${path}/remove`, photo.version + 1, {
      reason: 'shows a person',
    });
    expect([status, body.photos.some(({ id }) => id === photo.id)]).toEqual([200, false]);
    expect(body.history.at(-1)!.sentence).toBe('Photo taken away: shows a person.');
    expect((await fetchPhoto(photo.name)).status).toBe(404);
    const left = await db.pool.query(
      'SELECT (SELECT count(*) FROM photo_file WHERE photo_id = p.id)::int AS files, removed_why FROM photo p WHERE id = $1',
      [photo.id],
    );
    expect(left.rows).toEqual([{ files: 0, removed_why: 'shows a person' }]);
  });

  it('is not added to a ticket that is closed', async () => {
    const other = await shop.newTicket('18020002');
    await (await shop.as('manager')).change('POST', `/tickets/${other.id}/cancel`, other.version, { reason: 'sold' });
    [ticket] = [other];
    expect((await send(await jpeg())).status).toBe(409);
  });
});

describe('34: many slow senders', () => {
  it('keep nobody else waiting', async () => {
    const { hostname, port } = new URL(shop.api.url);
    const head =
      `POST /api/tickets/1/photos HTTP/1.1\r\nhost: ${hostname}\r\ncookie: ${technician.cookie}\r\n` +
      `content-type: multipart/form-data; boundary=x\r\ncontent-length: 1000000\r\n\r\n` +
      `--x\r\ncontent-disposition: form-data; name="photo"; filename="a"\r\n\r\n`;
    const open = await shop.newTicket('18020034');
    const slow: Socket[] = [];
    let ended = 0;
    const sending = Array.from({ length: 1_000 }, () => {
      const socket = connect(Number(port), hostname);
      socket.on('error', () => undefined).on('close', () => ended++);
      slow.push(socket);
      return new Promise<void>((resolve) => socket.write(`${head}\xff\xd8`, () => resolve()));
    });
    await Promise.all(sending);
    expect((await technician.get(`/tickets/${open.id}`)).status).toBe(200);
    expect((await technician.ask('POST', '/look-up', { lineCode: 'SNOW-2' })).status).toBe(200);
    expect((await (await shop.as('manager')).ask('GET', '/board')).status).toBe(200);
    ticket = open;
    expect((await send(await jpeg())).status).toBe(200);
    // All that while they were there and sent nothing.
    expect([slow.filter(({ bytesWritten }) => bytesWritten > 0).length, ended]).toEqual([1_000, 0]);
    for (const socket of slow) socket.destroy();
  }, 60_000);
});

/** The smallest archive there is: only its end, which says how long the comment after it is. */
function emptyZip(comment: string): Buffer {
  const end = Buffer.alloc(22);
  end.write('PK\x05\x06', 'latin1');
  end.writeUInt16LE(comment.length, 20);
  return Buffer.concat([end, Buffer.from(comment)]);
}

/** A JPEG with a comment segment right after its start (ISO/IEC 10918-1, marker COM). */
function commented(picture: Buffer, text: string): Buffer {
  const length = Buffer.alloc(2);
  length.writeUInt16BE(text.length + 2);
  return Buffer.concat([
    picture.subarray(0, 2),
    Buffer.from([0xff, 0xfe]),
    length,
    Buffer.from(text),
    picture.subarray(2),
  ]);
}
