// Generated from reference-tables/rolling-resistance by `npm run tables`. Do not edit.
export const rollingResistance = {
  source: {
    document: 'Earthmoving texts and FM 5-434, Earthmoving Operations; a course worksheet',
    edition: 'edition not recalled',
    clause: 'rolling resistance',
    provenance: 'memory',
  },
  rows: {
    'concrete-or-asphalt': {
      'printed-table': { low_lb_per_short_ton: 30, high_lb_per_short_ton: 45 },
      'worksheet': { low_lb_per_short_ton: 40, high_lb_per_short_ton: 40, provenance: 'read' },
    },
    'firm-smooth-earth': {
      'printed-table': { low_lb_per_short_ton: 50, high_lb_per_short_ton: 70 },
      'worksheet': { low_lb_per_short_ton: 65, high_lb_per_short_ton: 65, provenance: 'read' },
    },
    'earth-poorly-maintained-rutted': {
      'printed-table': { low_lb_per_short_ton: 100, high_lb_per_short_ton: 140 },
    },
    'loose-gravel': {
      'printed-table': { low_lb_per_short_ton: 200, high_lb_per_short_ton: 240 },
    },
    'loose-sand': {
      'printed-table': { low_lb_per_short_ton: 160, high_lb_per_short_ton: 300 },
    },
    'earth-muddy-rutted': {
      'printed-table': { low_lb_per_short_ton: 300, high_lb_per_short_ton: 400 },
    },
    'rutted-dirt-1-to-2-in': {
      'worksheet': { low_lb_per_short_ton: 100, high_lb_per_short_ton: 100, provenance: 'read' },
    },
    'rutted-dirt-4-in': {
      'worksheet': { low_lb_per_short_ton: 150, high_lb_per_short_ton: 150, provenance: 'read' },
    },
    'loose-sand-or-gravel': {
      'worksheet': { low_lb_per_short_ton: 200, high_lb_per_short_ton: 200, provenance: 'read' },
    },
  },
} as const;
