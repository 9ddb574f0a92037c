// Generated from reference-tables/sling-rules by `npm run tables`. Do not edit.
export const slingRules = {
  rows: {
    'credited-legs-of-two': { value: 2, clause: 'OSHA Guidance on Safe Sling Use, Table 1' },
    'credited-legs-of-three-or-four': { value: 3, clause: 'OSHA Guidance on Safe Sling Use, Table 1' },
    'cautious-legs-of-three-or-four': { value: 2, clause: 'NAVEDTRA 14080, bridle hitch; DGUV Information 209-021' },
    'least-angle-from-horizontal': { value: 30, unit: 'deg', clause: 'ASME B30.9, 9-1.5.4' },
    'greatest-angle-from-vertical': { value: 60, unit: 'deg', clause: 'EN 818-4, uniform load method' },
    'vertical-within': { value: 5, unit: 'deg', clause: '29 CFR 1910.184(b)' },
    'least-choke-angle': { value: 120, unit: 'deg', clause: 'OSHA Guidance on Safe Sling Use' },
    'choke-factor-us': { value: 0.75, clause: 'NAVEDTRA 14081, choker hitch' },
    'choke-factor-eu': { value: 0.8, clause: 'EN 818-4, choke hitch' },
    'endless-choke-factor-eu': { value: 1.6, clause: 'EN 818-4, endless sling, choke hitch' },
    'symmetric-load-share': { value: 0.8, clause: 'EN 818-6', provenance: 'memory' },
    'symmetric-least-angle-from-vertical': { value: 15, unit: 'deg', clause: 'EN 818-6', provenance: 'memory' },
    'symmetric-spread': { value: 15, unit: 'deg', clause: 'EN 818-6', provenance: 'memory' },
    'unsymmetric-share': { value: 0.5, clause: 'EN 818-6', provenance: 'memory' },
  },
} as const;
