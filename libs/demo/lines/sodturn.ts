import type { Calendar } from '../calendar';
import { paper, part, pin, says, type LineRoom, type PositionRoom } from './line-room';

/** A rear tine tiller. */
export function sodturn(calendar: Calendar): LineRoom {
  const { ago } = calendar;
  return {
    code: 'SODTURN',
    maker: 'QUILMO',
    name: 'Sodturn rear tine tiller',
    kind: 'tiller',
    models: [
      { number: 'ST50', name: 'Sodturn 50' },
      { number: 'ST60D', name: 'Sodturn 60 Duo' },
    ],
    options: [{ code: 'furrower', name: 'Furrower' }],
    producedFrom: ago(12, 2),
    producedUntil: null,
    sketch:
      'M14 20 L44 20 L48 36 L12 36 Z M44 24 L92 6 M22 36 a9 9 0 1 0 0.1 0 M56 34 L74 34 L78 48 L54 48 Z M66 40 a10 10 0 1 0 0.1 0 M60 56 L72 46',
    papers: {
      manual: paper('owners-manual', 'ST-B-020', 'Sodturn handbook', ago(12, 2)),
      list: paper('parts-list', 'ST-T-050', 'Sodturn parts list', ago(10, 10, 11)),
      revised: paper('revised-parts-list', 'ST-T-053', 'Sodturn parts list, issue 4', ago(5, 8, 30)),
      bulletin: paper('service-bulletin', 'ST-S-12', 'Tine drive pins of the Duo', ago(1, 4, 2), { receivedAfter: 18 }),
      finding: paper('shop-finding', 'SF-11', 'Sodturn wheel pins that wear the hub', ago(4, 9, 14), {
        receivedAfter: 0,
      }),
    },
    positions: [...tines(calendar), ...tineShaft(calendar), ...drive(), ...gears(calendar)],
  };
}

function tines({ ago }: Calendar): PositionRoom[] {
  const joint = {
    shaftRadiusMm: 12,
    planes: 2 as const,
    shearPlanesAtMm: [11, 35],
    holeDiameterMm: 8.4,
    gripMm: 46,
    ratedTorqueNm: 480,
  };
  return [
    {
      code: 'TINE-PIN',
      name: 'Tine drive pin',
      assembly: 'Tines',
      places: ['left', 'right'],
      at: [64, 44],
      joint,
      parts: [
        part('G510-014', 'Drive pin M8, class 5.6', 230, pin(8, 55, ['ISO 898-1', '5.6'])),
        part('G510-018', 'Drive pin M8, class 4.8', 240, pin(8, 55, ['ISO 898-1', '4.8'])),
        part('G510-080', 'Bolt M8, class 10.9', 150, pin(8, 55, ['ISO 898-1', '10.9'])),
      ],
      rules: [
        says('manual', 'G510-014'),
        says('list', 'G510-014', {
          bars: [['G510-080', 'breaks-later', 'twice as strong as the pin']],
          action: 'stop-use',
        }),
        says('bulletin', 'G510-018', {
          models: ['ST60D'],
          built: [ago(7, 4), ago(4, 3)],
          bars: [['G510-014', 'breaks-later', 'cracks the split gear of the Duo']],
          action: 'call-back',
          replaces: [2],
        }),
      ],
    },
  ];
}

function tineShaft({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'TINE-SET',
      name: 'Bolo tine',
      assembly: 'Tines',
      places: ['left outer', 'left inner', 'right inner', 'right outer'],
      at: [70, 52],
      joint: null,
      parts: [
        part('G511-002', 'Bolo tine', 1120),
        part('G511-004', 'Bolo tine, heavy', 1390),
        part('G511-003', 'Bolo tine, mirrored', 1120),
      ],
      rules: [
        says('manual', 'G511-002'),
        says('list', 'G511-002', {
          allows: ['G511-004'],
          bars: [['G511-003', 'does-not-fit', 'turns the soil forward']],
        }),
        says('revised', 'G511-004', { built: [ago(6, 2), null], replaces: [2] }),
      ],
    },
    {
      code: 'TINE-SEAL',
      name: 'Tine shaft seal',
      assembly: 'Tines',
      places: ['left', 'right'],
      at: [58, 46],
      joint: null,
      parts: [part('G512-030', 'Seal, tine shaft', 620), part('G512-032', 'Seal, tine shaft, cassette', 980)],
      rules: [
        says('manual', 'G512-030'),
        says('list', 'G512-030'),
        says('revised', 'G512-032', { built: [ago(7, 1), null], allows: ['G512-030'], replaces: [2] }),
      ],
    },
  ];
}

function drive(): PositionRoom[] {
  const joint = {
    shaftRadiusMm: 9.5,
    planes: 2 as const,
    shearPlanesAtMm: [8, 27],
    holeDiameterMm: 6.4,
    gripMm: 35,
    ratedTorqueNm: 190,
  };
  return [
    {
      code: 'WHL-PIN',
      name: 'Wheel drive pin',
      assembly: 'Drive',
      places: ['left', 'right'],
      at: [22, 44],
      joint,
      parts: [
        part('G520-010', 'Wheel pin M6, class 5.8', 120, pin(6, 42, ['ISO 898-1', '5.8'])),
        part('G520-012', 'Wheel pin M6, grooved', 150, pin(6, 42, ['ISO 898-1', '5.8'], 5)),
        part('G520-061', 'Bolt M6, class 8.8', 80, pin(6, 42, ['ISO 898-1', '8.8'])),
      ],
      rules: [
        says('manual', 'G520-010'),
        says('list', 'G520-010', { allows: ['G520-012'] }),
        says('finding', null, { bars: [['G520-061', 'breaks-later', 'wears the hub oval']], action: 'next-service' }),
      ],
    },
  ];
}

function gears({ ago }: Calendar): PositionRoom[] {
  return [
    {
      code: 'DRV-BLT',
      name: 'Drive belt',
      assembly: 'Drive',
      places: ['belt'],
      at: [40, 30],
      joint: null,
      parts: [part('G521-110', 'Belt, drive', 1590), part('G521-115', 'Belt, drive, short', 1590)],
      rules: [
        says('manual', 'G521-110'),
        says('list', 'G521-110', { serials: { to: { day: ago(8, 9, 3), sequence: 210 } } }),
        says('list', 'G521-115', { serials: { from: { day: ago(8, 9, 3), sequence: 210 } } }),
      ],
    },
    {
      code: 'WRM-WHL',
      name: 'Worm wheel',
      assembly: 'Drive',
      places: ['wheel'],
      at: [60, 38],
      joint: null,
      parts: [part('G522-001', 'Worm wheel, bronze', 6890), part('G522-001A', 'Worm wheel, 22 teeth', 7290)],
      rules: [
        says('list', 'G522-001', { models: ['ST50'] }),
        says('list', 'G522-001A', { models: ['ST60D'] }),
        says('manual', 'G522-001', { models: ['ST50'] }),
      ],
    },
    {
      code: 'DRAG-STK',
      name: 'Depth stake clip',
      assembly: 'Drive',
      places: ['clip'],
      at: [80, 46],
      joint: null,
      parts: [part('G523-040', 'Clip, depth stake', 190), part('G523-042', 'Clip, furrower', 290)],
      rules: [
        says('manual', 'G523-040', { notFitted: 'furrower' }),
        says('list', 'G523-040', { notFitted: 'furrower' }),
        says('list', 'G523-042', { fitted: 'furrower' }),
      ],
    },
  ];
}
