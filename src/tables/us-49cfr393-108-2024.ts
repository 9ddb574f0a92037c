import { byKeys } from './find-row.js';
import { us49cfr393108Chain } from './generated/us-49cfr393-108-chain.js';
import { us49cfr393108FiberRope } from './generated/us-49cfr393-108-fiber-rope.js';
import { us49cfr393108Strapping } from './generated/us-49cfr393-108-strapping.js';
import { us49cfr393108Unmarked } from './generated/us-49cfr393-108-unmarked.js';
import { us49cfr393108Webbing } from './generated/us-49cfr393-108-webbing.js';
import { us49cfr393108WireRope } from './generated/us-49cfr393-108-wire-rope.js';
import type { RatingTable } from './rating-table.js';

/**
 * Working load limits of tie-downs that carry no maker's mark: 49 CFR 393.108 and its tables, as of 2024.
 * Chain 1/4 to 5/8 in, grades 30 to 100, webbing, wire rope, fiber rope and strapping. The lb column decides.
 *
 * @example
 * chainRating({ ratings: us49cfr393_108_2024, size: '5/16', grade: 70 }).workingLoadLimit
 * // => 4700 lb
 */
export const us49cfr393_108_2024 = {
  id: 'us-49cfr393-108-2024',
  title: '49 CFR 393.108, working load limits of tie-downs without a marked limit',
  asOf: '2024',
  system: 'workingLoadLimit',
  units: 'us',
  chain: us49cfr393108Chain,
  unmarkedChain: { grade: 30, clause: '49 CFR 393.108(d)' },
  market: 'north-america',
  others: {
    webbing: /* @__PURE__ */ byKeys({ table: us49cfr393108Webbing, keys: ['width'] }),
    'wire-rope': /* @__PURE__ */ byKeys({
      table: us49cfr393108WireRope,
      keys: ['size'],
      shareOfStrength: us49cfr393108Unmarked,
    }),
    'fiber-rope': /* @__PURE__ */ byKeys({
      table: us49cfr393108FiberRope,
      keys: ['material', 'size'],
      firstUnknown: { as: 'polypropylene', clause: '49 CFR 393.108(c)' },
    }),
    strapping: /* @__PURE__ */ byKeys({ table: us49cfr393108Strapping, keys: ['width', 'thickness'] }),
  },
} as const satisfies RatingTable;

/**
 * The chain of {@link us49cfr393_108_2024} alone, for an application that carries no other kind of tie-down. Chain,
 * hooks and links are rated alike under both; webbing, rope and strapping have no rating here but their mark.
 *
 * @example
 * assemblyRating({ ratings: us49cfr393_108_chain_2024, parts: [{ id: 'chain', kind: 'chain', size: '3/8', grade: 70 }] }).workingLoadLimit
 * // => 6600 lb
 */
export const us49cfr393_108_chain_2024 = {
  id: 'us-49cfr393-108-chain-2024',
  title: '49 CFR 393.108, working load limits of chain without a marked limit',
  asOf: '2024',
  system: 'workingLoadLimit',
  units: 'us',
  chain: us49cfr393108Chain,
  unmarkedChain: { grade: 30, clause: '49 CFR 393.108(d)' },
  market: 'north-america',
} as const satisfies RatingTable;
