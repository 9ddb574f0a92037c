import * as z from 'zod';
import { MOST_FRICTION } from '../securement/layout.js';
import { TIE_DOWN_PATHS } from '../securement/plan.js';
import {
  build,
  claimIds,
  type Fault,
  fault,
  fieldOf,
  fields,
  flag,
  isFault,
  itemsOf,
  list,
  name,
  optional,
  text,
  withFaults,
  word,
} from './fields.js';
import { capacities, partList } from './part.js';
import { force, length, mass, point, ratedLoad } from './quantity.js';

/**
 * The vehicle or combination that carries the load.
 *
 * @example
 * const check = checkJson(vehicleSchema, { units: [{ id: 'pickup', kind: 'power', grossWeight: '3 ton' }] });
 * if (!check.ok) console.log(check.issues[0].path);
 * // => units[0].grossWeight
 */
export const vehicleSchema = /* @__PURE__ */ build(() =>
  fields('a vehicle', {
    units: list(
      fields('a unit of the vehicle', {
        id: name(),
        kind: word(['power', 'towed']),
        grossWeightRating: optional(mass),
        grossWeight: optional(mass),
      }),
      1,
      'at least one unit',
    ),
    deck: optional(fields('a deck', { length, width: length })),
    combinationRatingOnLabel: optional(mass),
    interstateCommerce: optional(flag()),
  }),
);

const friction = /* @__PURE__ */ build(() =>
  withFaults(z.number().min(0).max(MOST_FRICTION), (value) => [
    fault(
      typeof value === 'number' && value < 0 ? 'NEGATIVE' : 'NOT_FINITE',
      `a friction factor from 0 to ${MOST_FRICTION}`,
      value,
      'Give the number, such as 0.3.',
    ),
  ]),
);

const outline = /* @__PURE__ */ build(() =>
  withFaults(z.tuple([point, point]), (value) => [
    fault('MISSING_FIELD', 'two opposite corners [[x, y, z], [x, y, z]]', value, 'Leave it out when not known.'),
  ]),
);

/** The fields of an article; in a request for one article alone its id may be left out. */
export const articleFields = /* @__PURE__ */ build(() => ({
  id: name(),
  kind: word(['machinery', 'light-vehicle', 'general']),
  mass,
  length,
  blockedForward: optional(flag()),
  accessories: optional(
    list(
      fields('an accessory', { id: name(), lowered: optional(flag()), locked: optional(flag()) }),
      0,
      'a list of accessories',
    ),
  ),
  articulated: optional(flag()),
  articulationLocked: optional(flag()),
  securedUnder: optional(text('a rule, such as 393.130')),
  specialMethods: optional(flag()),
  frictionMat: optional(fields('a friction mat', { massOnMat: mass, ratedResistance: optional(ratedLoad) })),
  centerOfGravity: optional(point),
  contacts: optional(
    list(
      fields('a contact', {
        at: point,
        friction: optional(friction),
        gives: optional(fields('how far it gives', { by: length, under: force })),
      }),
      1,
      'at least one contact point',
    ),
  ),
  friction: optional(friction),
  surfaces: optional(
    fields('surfaces', {
      load: text('a surface as the friction table writes it'),
      deck: text('a surface as the friction table writes it'),
      condition: optional(word(['dry', 'wet', 'frost'])),
    }),
  ),
  headboard: optional(word(['none', 'partial', 'adequate'])),
  shipForces: optional(fields('forces of the ship', { longitudinal: optional(force), transverse: optional(force) })),
  outline: optional(outline),
}));

/**
 * One thing on the deck that must be held.
 *
 * @example
 * const tractor = { id: 'tractor', kind: 'machinery', mass: '3940 lb', length: '10 ft', blockedFoward: true };
 * const check = checkJson(articleSchema, tractor);
 * if (!check.ok) console.log(check.issues[0].code, check.issues[0].path);
 * // => UNKNOWN_FIELD blockedFoward
 */
export const articleSchema = /* @__PURE__ */ build(() => fields('an article', articleFields));

/** What is said of a tie-down with both parts and capacities, or neither. */
const EITHER = ['parts', 'capacities'];

/**
 * A tie-down, given part by part or as a whole.
 *
 * @example
 * const check = checkJson(tieDownSchema, { id: 'front', holds: 'tractor', path: 'vehicle-to-cargo' });
 * if (!check.ok) console.log(check.issues[0].code);
 * // => CONFLICTING_FIELDS
 */
export const tieDownSchema = /* @__PURE__ */ build(() => {
  const holds = withFaults(z.string().min(1), (value) => [
    fault(
      value === undefined ? 'MISSING_FIELD' : 'UNKNOWN_REFERENCE',
      'the id of an article or accessory',
      value,
      'Name what the tie-down holds.',
    ),
  ]);
  const base = {
    id: name(),
    holds,
    path: word(TIE_DOWN_PATHS),
    end: optional(word(['front', 'rear'])),
    anchor: optional(point),
    attachment: optional(point),
    otherAttachment: optional(point),
    otherAnchor: optional(point),
    pretension: optional(force),
    axialStiffness: optional(force),
  };
  const ofParts = fields('a tie-down of parts', { ...base, parts: partList() });
  const asWhole = fields('a tie-down as a whole', { ...base, capacities });
  return withFaults(z.union([ofParts, asWhole]), (value, issue) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) {
      return [
        fault('MISSING_FIELD', 'a tie-down { id, holds, path, parts }', value, 'Give the tie-down with its fields.'),
      ];
    }
    // Each side of the union was tried: the one that the tie-down looks like says what is wrong with it.
    const sides = (issue as z.core.$ZodIssueInvalidUnion).errors;
    const given = EITHER.filter((key) => fieldOf(value, key) !== undefined);
    const said = (sides[given[0] === 'capacities' ? 1 : 0] ?? []).flatMap((each): Fault[] =>
      isFault(each) ? [{ ...each.params, at: each.path }] : [],
    );
    if (given.length === 1) return said;
    const conflict = fault(
      'CONFLICTING_FIELDS',
      'parts or capacities, one of the two',
      undefined,
      'List the parts, or state the capacity of the whole tie-down.',
    );
    return [
      { ...conflict, received: given.length === 0 ? 'neither' : 'both' },
      ...said.filter(({ at = [] }) => at.length !== 1 || !EITHER.includes(String(at[0]))),
    ];
  });
});

/** The fields of a plan, for the plan and for requests that hold one. */
export const planFields = /* @__PURE__ */ build(() => ({
  vehicle: optional(vehicleSchema),
  seaArea: optional(word(['A', 'B', 'C'])),
  articles: list(articleSchema, 1, 'at least one article'),
  tieDowns: list(tieDownSchema, 1, 'at least one tie-down'),
}));

/** What concerns a plan as a whole: ids used once, tie-downs that hold something that exists. */
export function planFaults(plan: unknown): readonly Fault[] {
  const claim = claimIds('Rename one of the two.');
  const faults: Fault[] = [];
  const held = new Set<unknown>();
  itemsOf(fieldOf(plan, 'articles')).forEach((article, index) => {
    faults.push(...claim(article, ['articles', index]));
    held.add(fieldOf(article, 'id'));
    itemsOf(fieldOf(article, 'accessories')).forEach((accessory, at) => {
      faults.push(...claim(accessory, ['articles', index, 'accessories', at]));
      held.add(fieldOf(accessory, 'id'));
    });
  });
  itemsOf(fieldOf(plan, 'tieDowns')).forEach((tieDown, index) => {
    faults.push(...claim(tieDown, ['tieDowns', index]));
    const holds = fieldOf(tieDown, 'holds');
    if (typeof holds !== 'string' || holds === '' || held.has(holds)) return;
    const known = [...held].filter((id) => typeof id === 'string').slice(0, 20);
    faults.push(
      fault(
        'UNKNOWN_REFERENCE',
        `the id of an article or accessory: ${known.join(', ')}`,
        holds,
        'Name what the tie-down holds.',
        ['tieDowns', index, 'holds'],
      ),
    );
  });
  return faults;
}

/**
 * The load on its vehicle: the plan that `checkSecurement` and the other functions over a plan take.
 *
 * @example
 * const plan = readJson(planSchema, {
 *   articles: [{ id: 'tractor', kind: 'machinery', mass: { value: 3940, unit: 'lb' }, length: '10 ft' }],
 *   tieDowns: [
 *     { id: 'front', holds: 'tractor', path: 'vehicle-to-cargo', capacities: { workingLoadLimit: '3150 lb' } },
 *     { id: 'rear', holds: 'tractor', path: 'vehicle-to-cargo', capacities: { workingLoadLimit: '3150 lb' } },
 *   ],
 * });
 * checkSecurement({ rules: us49cfr393_2024, ...plan }).verdict
 * // => 'pass'
 */
export const planSchema = /* @__PURE__ */ build(() =>
  withFaults(fields('a plan', planFields), () => undefined, planFaults),
);
