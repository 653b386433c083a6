import fc from 'fast-check';
import { Receiver } from './testing/receiver';
import { isPublicAddress, openCourier } from './index';

const open: Receiver[] = [];
const receiver = async (host?: string) => {
  const one = await Receiver.open(host);
  open.push(one);
  return one;
};
afterEach(() => Promise.all(open.splice(0).map((one) => one.close())));

describe('an address', () => {
  // IANA's registries of special-purpose addresses (RFC 6890 and its updates), one of each block, and the ways in which IPv4
  // is written in IPv6 (RFC 4291, 6052, 3056, 4380).
  it.each([
    ...['0.0.0.0', '10.1.2.3', '100.64.0.1', '127.0.0.1', '127.255.255.254', '169.254.169.254', '172.16.0.1'],
    ...['172.31.255.255', '192.0.0.1', '192.0.2.1', '192.168.0.1', '198.18.0.1', '198.51.100.1', '203.0.113.1'],
    ...['224.0.0.1', '239.255.255.255', '240.0.0.1', '255.255.255.255'],
    ...[
      '::',
      '::1',
      '0:0:0:0:0:0:0:1',
      '::127.0.0.1',
      '::7f00:1',
      '::a9fe:a9fe',
      '::ffff:127.0.0.1',
      '::ffff:10.0.0.1',
    ],
    ...[
      '::ffff:a9fe:a9fe',
      '64:ff9b::7f00:1',
      '64:ff9b::a9fe:a9fe',
      '2002:7f00:1::',
      '2001::1',
      '2001:db8::1',
      '100::1',
    ],
    ...['fc00::1', 'fd00:ec2::254', 'fe80::1', 'fe80::1%eth0', 'fec0::1', 'ff02::1', '::ffff:0:7f00:1'],
    ...['localhost', '', '127.1', '0x7f.1', '2130706433', '017700000001'],
  ])('%s is no public one', (address) => {
    expect(isPublicAddress(address)).toBe(false);
  });

  it.each(['1.1.1.1', '172.15.0.1', '172.32.0.1', '::ffff:8.8.8.8', '2606:4700::1111', '2a00:1450::1'])(
    '%s is a public one',
    (address) => expect(isPublicAddress(address)).toBe(true),
  );

  it('of a private network is not made public by any dress of IPv6', () => {
    const octet = fc.integer({ min: 0, max: 255 });
    const inside = fc.oneof(
      fc.tuple(fc.constantFrom(10, 127), octet, octet, octet),
      fc.tuple(fc.constant(192), fc.constant(168), octet, octet),
      fc.tuple(fc.constant(169), fc.constant(254), octet, octet),
    );
    const dress = fc.constantFrom('::', '::ffff:', '64:ff9b::', '::ffff:0:');
    fc.assert(
      fc.property(inside, dress, (parts, before) => {
        expect([isPublicAddress(parts.join('.')), isPublicAddress(before + parts.join('.'))]).toEqual([false, false]);
      }),
    );
  });
});

describe('a post to an address of the house that nobody allowed', () => {
  it.each([
    ['by its address', 'https://127.0.0.1', undefined],
    ['by its address in other words', 'https://0x7f.1', undefined],
    ['by its address as one number', 'https://2130706433', undefined],
    ['by IPv6', 'https://[::ffff:127.0.0.1]', undefined],
    ['by an old way of IPv6', 'https://[::127.0.0.1]', undefined],
    ['by a name', 'https://inside.example', ['127.0.0.1']],
    ['by a name that leads outside too', 'https://both.example', ['1.1.1.1', '127.0.0.1']],
    ['to what a cloud tells its machines', 'https://metadata.example', ['169.254.169.254']],
    ['by a name that leads nowhere', 'https://nowhere.example', []],
    ['in the open', 'http://inside.example', ['127.0.0.1']],
  ])('is not made: %s', async (_, origin, addresses) => {
    const inside = await receiver();
    const courier = openCourier(addresses ? { resolve: () => Promise.resolve(addresses) } : {});
    const answer = await courier.post(`${origin}:${inside.port}/hook`, '{}', {});
    expect(answer).toMatchObject({
      kind: 'failed',
      why: expect.stringMatching(/no public address|not spoken to|nowhere/) as string,
    });
    expect(inside.connections).toBe(0);
  });
});

describe('a post to a host of the house that is named', () => {
  it('arrives as it was given, at the very address its name led to, which is asked for once', async () => {
    const [first, second] = [await receiver(), await receiver('127.0.0.2')];
    let asked = 0;
    const courier = openCourier({
      inHouse: ['rebinder.example'],
      // The name server changes its mind after the first question.
      resolve: () => Promise.resolve([asked++ === 0 ? '127.0.0.1' : '127.0.0.2']),
    });
    const answer = await courier.post(`http://rebinder.example:${first.port}/hook?x=1`, '{"é":1}', {
      'webhook-id': 'evt_7',
    });
    expect(answer).toEqual({ kind: 'answered', status: 204 });
    expect(first.received).toEqual([
      expect.objectContaining({
        path: '/hook?x=1',
        body: '{"é":1}',
        headers: expect.objectContaining({ host: `rebinder.example:${first.port}`, 'webhook-id': 'evt_7' }) as unknown,
      }),
    ]);
    expect([asked, second.connections]).toEqual([1, 0]);
  });

  it('is not led on by a redirect', async () => {
    const [first, other] = [await receiver(), await receiver()];
    first.answers = (response) => void response.writeHead(302, { location: `http://127.0.0.1:${other.port}/` }).end();
    const courier = openCourier({ inHouse: ['127.0.0.1'] });
    expect(await courier.post(`http://127.0.0.1:${first.port}/`, '{}', {})).toEqual({ kind: 'answered', status: 302 });
    expect(other.connections).toBe(0);
  });

  it.each([
    ['hangs', () => undefined],
    [
      'drips its head',
      (response: { socket: { write(text: string): void } | null }) => void response.socket?.write('HTTP/1.1 2'),
    ],
  ])('is given up when the receiver %s', async (_, answers) => {
    const slow = await receiver();
    slow.answers = answers;
    const courier = openCourier({ inHouse: ['127.0.0.1'], patienceMs: 200 });
    expect(await courier.post(`http://127.0.0.1:${slow.port}/`, '{}', {})).toEqual({
      kind: 'failed',
      why: "'127.0.0.1' did not answer within 0.2 seconds.",
    });
  });

  it('is given up when its name is not answered for', async () => {
    const courier = openCourier({
      inHouse: ['slow.example'],
      patienceMs: 200,
      resolve: () => new Promise(() => undefined),
    });
    expect(await courier.post('http://slow.example/', '{}', {})).toMatchObject({ kind: 'failed' });
  });

  it('reads no answer beyond its head, however long it is', async () => {
    const talker = await receiver();
    let sent = 0;
    const ended = new Promise<void>((resolve) => {
      talker.answers = (response) => {
        response.writeHead(200);
        const more = () => {
          while (!response.destroyed && response.write(Buffer.alloc(65_536))) sent += 65_536;
        };
        response.on('drain', more).on('close', resolve);
        more();
      };
    });
    const courier = openCourier({ inHouse: ['127.0.0.1'] });
    expect(await courier.post(`http://127.0.0.1:${talker.port}/`, '{}', {})).toEqual({ kind: 'answered', status: 200 });
    await ended;
    expect(sent).toBeLessThan(64 * 1_048_576);
  });

  it('that nobody listens at is told as such', async () => {
    const gone = await Receiver.open();
    const { port } = gone;
    await gone.close();
    const courier = openCourier({ inHouse: ['127.0.0.1'] });
    expect(await courier.post(`http://127.0.0.1:${port}/`, '{}', {})).toEqual({
      kind: 'failed',
      why: "'127.0.0.1' was not reached: ECONNREFUSED.",
    });
  });
});
