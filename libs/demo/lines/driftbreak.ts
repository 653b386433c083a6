import type { Calendar } from '../calendar';
import { paper, part, pin, says, type LineRoom, type PositionRoom } from './line-room';

/** A two-stage snow thrower: the auger's four shear pins are what the kept bulletin is about. */
export function driftbreak(calendar: Calendar): LineRoom {
  const { ago } = calendar;
  return {
    code: 'DRIFTBREAK',
    maker: 'BRAKEN',
    name: 'Driftbreak two-stage snow thrower',
    kind: 'snow thrower',
    models: [
      { number: 'DB-24', name: 'Driftbreak 24' },
      { number: 'DB-28', name: 'Driftbreak 28' },
      { number: 'DB-32', name: 'Driftbreak 32 Track' },
    ],
    options: [
      { code: 'heated-grips', name: 'Heated grips' },
      { code: 'heavy-housing', name: 'Heavy auger housing' },
    ],
    producedFrom: ago(14, 9),
    producedUntil: null,
    sketch:
      'M6 50 L8 22 L38 22 L40 50 Z M38 30 L70 28 L92 8 M44 22 L48 4 L58 4 L56 22 M60 50 a9 9 0 1 0 0.1 0 M12 36 L34 36',
    papers: {
      manual: paper('owners-manual', 'DB-OM-1', 'Driftbreak owner’s manual', ago(14, 9)),
      list: paper('parts-list', 'DB-PL-11', 'Driftbreak parts list', ago(11, 2, 10)),
      revised: paper('revised-parts-list', 'DB-PL-12', 'Driftbreak parts list, second printing', ago(8, 1, 22)),
      bulletin: paper('service-bulletin', 'DB-SB-03', 'Impeller belts that stretch', ago(1, 10, 4), {
        receivedAfter: 9,
      }),
      finding: paper('shop-finding', 'SF-07', 'Hardened bolts found in auger shafts', ago(6, 2, 15), {
        receivedAfter: 0,
      }),
    },
    positions: [...auger(calendar), ...housing(calendar), ...scraper(), ...drive(calendar), ...frame(calendar)],
  };
}

function auger({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'AUG-PIN',
      name: 'Auger shear pin',
      assembly: 'Auger',
      places: ['left outer', 'left inner', 'right inner', 'right outer'],
      at: [16, 38],
      joint: {
        shaftRadiusMm: 9.5,
        planes: 2,
        shearPlanesAtMm: [12.7, 31.7],
        holeDiameterMm: 6.6,
        gripMm: 38,
        ratedTorqueNm: 310,
      },
      parts: [
        part('30-1120', 'Shear pin, auger, grooved', 290, pin(6.35, 44.5, ['pin material', '1010 cold drawn'], 4.8)),
        part('30-1127', 'Shear pin, auger, plain', 310, pin(6.35, 44.5, ['pin material', '1018 cold drawn'])),
        part(
          '30-1127B',
          'Shear pin, auger, grooved, coated',
          345,
          pin(6.35, 44.5, ['pin material', '1018 cold drawn'], 5.2),
        ),
        part('30-1150', 'Bolt, hub, grade 8', 180, pin(6.35, 44.5, ['SAE J429', '8'])),
      ],
      rules: [
        says('manual', '30-1120'),
        says('list', '30-1120'),
        says('revised', '30-1127', {
          built: [ago(9, 1), null],
          bars: [['30-1120', 'breaks-sooner', 'lets go in wet snow with the wider auger']],
        }),
        says('finding', null, {
          bars: [['30-1150', 'breaks-later', 'the gear case breaks before this bolt does']],
          action: 'next-service',
        }),
      ],
    },
  ];
}

function housing({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'IMP-PIN',
      name: 'Impeller shear pin',
      assembly: 'Auger',
      places: ['impeller hub'],
      at: [27, 33],
      joint: {
        shaftRadiusMm: 12.7,
        planes: 2,
        shearPlanesAtMm: [10, 35.4],
        holeDiameterMm: 8.3,
        gripMm: 46,
        ratedTorqueNm: 520,
      },
      parts: [
        part('30-1204', 'Shear bolt, impeller', 420, pin(7.94, 50.8, ['SAE J429', '2'])),
        part('30-1204A', 'Shear bolt, impeller, full shank', 455, pin(7.94, 57.2, ['SAE J429', '2'])),
        part('30-1211', 'Bolt, pulley hub, grade 5', 240, pin(7.94, 50.8, ['SAE J429', '5'])),
      ],
      rules: [
        says('manual', '30-1204'),
        says('list', '30-1204', { built: [null, ago(11, 6)] }),
        says('list', '30-1204A', { built: [ago(11, 6), null], allows: ['30-1204'] }),
        says('finding', null, { bars: [['30-1211', 'breaks-later', 'same size, three lines on the head']] }),
      ],
    },
    {
      code: 'AUG-BSH',
      name: 'Auger shaft bushing',
      assembly: 'Auger',
      places: ['left', 'right'],
      at: [9, 44],
      joint: null,
      parts: [part('31-0420', 'Bushing, bronze', 890), part('31-0428', 'Bushing, flanged', 940)],
      rules: [
        says('manual', '31-0420'),
        says('list', '31-0420', { notFitted: 'heavy-housing' }),
        says('list', '31-0428', { fitted: 'heavy-housing' }),
      ],
    },
  ];
}

function scraper(): PositionRoom[] {
  return [
    {
      code: 'SCR-BAR',
      name: 'Scraper bar',
      assembly: 'Auger',
      places: ['housing edge'],
      at: [22, 50],
      joint: null,
      parts: [
        part('31-0610', 'Scraper bar 24', 3900),
        part('31-0612', 'Scraper bar 28', 4300),
        part('31-0614', 'Scraper bar 32', 4800),
      ],
      rules: [
        says('list', '31-0610', { models: ['DB-24'] }),
        says('list', '31-0612', { models: ['DB-28'] }),
        says('list', '31-0614', { models: ['DB-32'] }),
      ],
    },
  ];
}

function drive({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'IMP-BLT',
      name: 'Impeller belt',
      assembly: 'Drive',
      places: ['rear', 'front'],
      at: [48, 30],
      joint: null,
      parts: [
        part('32-2210', 'Belt, impeller', 2150),
        part('32-2214', 'Belt, impeller, aramid', 2690),
        part('32-2219', 'Belt, farm pattern', 1800),
      ],
      rules: [
        says('manual', '32-2210'),
        says('list', '32-2210', { allows: ['32-2214'] }),
        says('bulletin', '32-2214', {
          built: [ago(7, 5), ago(4, 2)],
          bars: [['32-2210', 'does-not-fit', 'the idler arm of these units is 4 mm longer']],
          action: 'call-back',
          replaces: [2],
        }),
      ],
    },
    {
      code: 'DRV-BLT',
      name: 'Traction belt',
      assembly: 'Drive',
      places: ['belt'],
      at: [56, 36],
      joint: null,
      parts: [part('32-2301', 'Belt, traction', 1790), part('32-2305', 'Belt, traction, long', 1840)],
      rules: [
        says('manual', '32-2301'),
        says('revised', '32-2301', { serials: { to: { day: ago(8, 4, 12), sequence: 400 } } }),
        says('revised', '32-2305', { serials: { from: { day: ago(8, 4, 12), sequence: 400 } } }),
      ],
    },
    {
      code: 'FRC-WHL',
      name: 'Friction wheel ring',
      assembly: 'Drive',
      places: ['ring'],
      at: [62, 42],
      joint: null,
      parts: [part('32-4410', 'Friction ring', 1420), part('32-4410A', 'Friction ring, bonded', 1560)],
      rules: [says('list', '32-4410'), says('revised', '32-4410A', { built: [ago(9, 7), null], replaces: [1] })],
    },
  ];
}

function frame({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'CHT-GER',
      name: 'Chute gear',
      assembly: 'Chute',
      places: ['pinion'],
      at: [52, 18],
      joint: null,
      parts: [part('33-0105', 'Pinion, chute, nylon', 760), part('33-0107', 'Pinion, chute, steel', 1180)],
      rules: [
        says('manual', '33-0105'),
        says('list', '33-0105', { built: [null, ago(7, 6)], allows: ['33-0107'] }),
        says('list', '33-0107', { built: [ago(7, 9), null] }),
      ],
    },
    {
      code: 'AXL-BRG',
      name: 'Axle bearing',
      assembly: 'Frame',
      places: ['left', 'right'],
      at: [60, 50],
      joint: null,
      parts: [part('33-0901', 'Bearing, axle, open', 1250), part('33-0901A', 'Bearing, axle, sealed', 1390)],
      rules: [says('manual', '33-0901'), says('list', '33-0901A', { allows: ['33-0901'] })],
    },
  ];
}
