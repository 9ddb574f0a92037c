import * as z from 'zod';
import type { RiggingErrorCode } from '../errors.js';
import { TIE_DOWN_PATHS } from '../securement/plan.js';
import { FITTING_KINDS, MOST_PRICE, PRICE_SCALE } from '../selection/kit-item.js';
import {
  build,
  claimIds,
  type Fault,
  fault,
  fieldOf,
  fields,
  flag,
  itemsOf,
  list,
  name,
  optional,
  text,
  withFaults,
  word,
  wrongWord,
} from './fields.js';
import { anchorPart, anyGrade, grade, tradeSize } from './part.js';
import { articleFields, articleSchema, planFaults, vehicleSchema } from './plan.js';
import { length, mass, ratedLoad } from './quantity.js';
import { ratings, rules } from './requests.js';

const price = /* @__PURE__ */ build(() => {
  const say = (value: unknown): readonly Fault[] => {
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      return [fault('NOT_FINITE', 'a price of one piece', value, 'Give a plain number.')];
    }
    if (value < 0) return [fault('NEGATIVE', 'a price of 0 or more', value, 'Check the sign.')];
    return value > MOST_PRICE ? [fault('TOO_LARGE', `at most ${MOST_PRICE}`, value, 'Check the number.')] : [];
  };
  return withFaults(z.number().min(0).max(MOST_PRICE), say, (value) => {
    const fine = typeof value === 'number' && Math.abs(value) <= MOST_PRICE;
    if (!fine || Math.round(value * PRICE_SCALE) / PRICE_SCALE === value) return [];
    return [fault('TEXT_TOO_PRECISE', 'at most 4 decimals', value, 'Round the price of one piece.')];
  });
});

function wholeNumber(
  expected: string,
  low: number,
  codeOf: (value: unknown) => RiggingErrorCode | undefined = () => undefined,
  high: number = Number.MAX_SAFE_INTEGER,
) {
  return withFaults(z.number().min(low).max(high).multipleOf(1), (value) => [
    fault(codeOf(value) ?? 'NOT_A_WHOLE_NUMBER', expected, value, 'Count them.'),
  ]);
}

/**
 * One row of a catalog or of what somebody owns.
 *
 * @example
 * const check = checkJson(kitItemSchema, { id: 'binder', kind: 'binder', markedWll: '5400 lb', mass: '9 lb', price: -35 });
 * if (!check.ok) for (const { path, code } of check.issues) console.log(`${path}: ${code}`);
 * // => chainSizes: EMPTY_LIST
 * //    price: NEGATIVE
 */
export const kitItemSchema = /* @__PURE__ */ build(() => itemSchema(false));

function itemSchema(counted: boolean) {
  const count = wholeNumber('how many pieces, 0 or more', 0, (value) =>
    value === undefined ? 'MISSING_FIELD' : undefined,
  );
  const sizes = list(tradeSize, 1, 'the sizes of chain that it takes');
  const base = {
    id: name(),
    size: optional(tradeSize),
    grade: optional(anyGrade),
    chainSizes: optional(sizes),
    markedWll: optional(ratedLoad),
    length: optional(length),
    mass,
    price: optional(price),
    currency: optional(
      withFaults(z.string().min(1), (value) => [
        fault('UNKNOWN_VALUE', "a currency such as 'USD'", value, 'Leave it out where all prices are in one.'),
      ]),
    ),
    count: counted ? count : optional(count),
    includes: optional(list(word(FITTING_KINDS), 0, 'a list of fittings')),
  };
  const kinds = [
    fields('a chain', {
      ...base,
      kind: z.literal('chain'),
      size: tradeSize,
      length,
    }),
    fields('a hook or link', {
      ...base,
      kind: z.literal(['grab-hook', 'slip-hook', 'connecting-link', 'clevis']),
      size: tradeSize,
    }),
    fields('a tensioner', {
      ...base,
      kind: z.literal(['binder', 'turnbuckle']),
      chainSizes: sizes,
    }),
    fields('a part with a mark', {
      ...base,
      kind: z.literal(['shackle', 'master-link']),
    }),
  ] as const;
  return withFaults(
    z.discriminatedUnion('kind', kinds),
    (value, issue) =>
      issue.code === 'invalid_union'
        ? [
            {
              ...wrongWord((issue.options as string[]).join(', '), 'UNKNOWN_VALUE', fieldOf(value, 'kind')),
              at: ['kind'],
            },
          ]
        : [fault('MISSING_FIELD', 'an item { id, kind, mass }', value, 'Give the row with its fields.')],
    (item) =>
      fieldOf(item, 'kind') === 'chain' || itemsOf(fieldOf(item, 'includes')).length === 0
        ? []
        : [
            fault('CONFLICTING_FIELDS', 'fittings on a chain', fieldOf(item, 'kind'), 'Only chain is sold with them.', [
              'includes',
            ]),
          ],
  );
}

/** Every id of a list is used once. */
function idsOnce(value: unknown): readonly Fault[] {
  const claim = claimIds('Rename one of the two.');
  return itemsOf(value).flatMap((item, index) => claim(item, [index]));
}

/** A catalog is priced in one currency: the one that is asked for, or that of its first price. */
function currencyFaults(request: unknown): readonly Fault[] {
  const catalog = itemsOf(fieldOf(request, 'catalog'));
  const first = catalog.find((item) => fieldOf(item, 'price') !== undefined);
  const wanted = fieldOf(request, 'currency') ?? fieldOf(first, 'currency');
  return catalog.flatMap((item, index) => {
    const currency = fieldOf(item, 'currency');
    if (fieldOf(item, 'price') === undefined || currency === wanted) return [];
    const code = currency === undefined ? 'MISSING_FIELD' : 'CONFLICTING_FIELDS';
    const expected = typeof wanted === 'string' ? wanted : 'no currency, as the rows before';
    return [fault(code, expected, currency, 'A kit is priced in one currency.', ['catalog', index, 'currency'])];
  });
}

/** Where money is asked about, every row for sale has a price. */
function priceFaults(request: unknown): readonly Fault[] {
  const limits = fieldOf(request, 'limits');
  const asked =
    fieldOf(request, 'objective') === 'price' ||
    fieldOf(limits, 'price') !== undefined ||
    fieldOf(request, 'alternatives') !== undefined;
  if (!asked) return [];
  return itemsOf(fieldOf(request, 'catalog')).flatMap((item, index) =>
    fieldOf(item, 'price') === undefined
      ? [
          fault('MISSING_FIELD', 'a price of one piece', undefined, 'Give it, or leave the row out.', [
            'catalog',
            index,
            'price',
          ]),
        ]
      : [],
  );
}

/** A spare stands for something that the tie-down has. */
function spareFaults(tieDown: unknown): readonly Fault[] {
  const given = fieldOf(tieDown, 'fittings');
  const had: readonly unknown[] = ['chain', ...(given === undefined ? ['binder', 'grab-hook'] : itemsOf(given))];
  return itemsOf(fieldOf(tieDown, 'spares')).flatMap((spare, index) =>
    had.includes(spare) || ![...FITTING_KINDS, 'chain'].includes(spare as never)
      ? []
      : [fault('UNKNOWN_VALUE', `one of ${had.join(', ')}`, spare, 'Give one of these.', ['spares', index])],
  );
}

/**
 * The body of a request for `buildKit`, the rule set as a text id.
 *
 * @example
 * const check = checkJson(buildKitRequestSchema, {
 *   rules: 'us-49cfr393-2024',
 *   articles: [{ id: 'tractor', kind: 'machinery', mass: '3940 lb', length: '10 ft' }],
 *   tieDowns: [{ id: 'front', holds: 'tractor', path: 'vehicle-to-cargo', chainLength: '12 lb', anchors: [] }],
 *   objective: 'cheap',
 * });
 * if (!check.ok) for (const { path, code } of check.issues) console.log(`${path}: ${code}`);
 * // => tieDowns[0].chainLength: WRONG_KIND
 * //    objective: UNKNOWN_VALUE
 */
export const buildKitRequestSchema = /* @__PURE__ */ build(() => {
  const anchors = list(anchorPart, 0, 'the points it is fixed to', idsOnce);
  const tieDown = withFaults(
    fields('a tie-down', {
      id: name(),
      holds: withFaults(z.string().min(1), (value) => [
        fault(
          value === undefined ? 'MISSING_FIELD' : 'UNKNOWN_REFERENCE',
          'the id of an article or accessory',
          value,
          'Name what the tie-down holds.',
        ),
      ]),
      path: word(TIE_DOWN_PATHS),
      end: optional(word(['front', 'rear'])),
      chainLength: length,
      anchors,
      fittings: optional(list(word(FITTING_KINDS), 0, 'a list of fittings')),
      spares: optional(list(word(['chain', ...FITTING_KINDS]), 0, 'a list of spares')),
    }),
    () => undefined,
    spareFaults,
  );
  const sum = withFaults(z.number().min(0), (value) => [
    fault('NEGATIVE', 'a sum of money, 0 or more', value, 'Leave it out where there is no limit.'),
  ]);
  return withFaults(
    fields('a request', {
      rules,
      vehicle: optional(vehicleSchema),
      articles: list(articleSchema, 1, 'at least one article'),
      tieDowns: list(tieDown, 1, 'at least one tie-down'),
      stock: optional(list(itemSchema(true), 0, 'a list of items', idsOnce)),
      catalog: optional(list(kitItemSchema, 0, 'a list of items', idsOnce)),
      objective: word(['price', 'mass', 'parts']),
      limits: optional(
        fields('limits', {
          price: optional(sum),
          mass: optional(mass),
          parts: optional(wholeNumber('a number of pieces', 0)),
        }),
      ),
      stockFirst: optional(flag()),
      alternatives: optional(wholeNumber('2 to 20', 2, undefined, 20)),
      currency: optional(text('a currency')),
      units: optional(word(['us', 'si'])),
      working: optional(flag()),
    }),
    () => undefined,
    (request) => [...planFaults(request), ...currencyFaults(request), ...priceFaults(request)],
  );
});

/**
 * The body of a request for `chooseChain`, rule set and rating table as text ids. A planned pull stands as its required
 * limit and its length.
 *
 * @example
 * const body = readJson(chooseChainRequestSchema, {
 *   task: { kind: 'pull', requiredLimit: '1500 lb', length: '20 ft' },
 *   ratings: 'us-49cfr393-108-2024',
 *   objective: 'mass',
 * });
 * body.task.kind
 * // => 'pull'
 */
export const chooseChainRequestSchema = /* @__PURE__ */ build(() => {
  const tasks = [
    fields('a haul', {
      kind: z.literal('haul'),
      rules,
      article: fields('an article', { ...articleFields, id: optional(articleFields.id) }),
      tieDowns: wholeNumber('how many tie-downs share it', 1),
      path: word(TIE_DOWN_PATHS),
      length,
    }),
    fields('a pull or a wrap', { kind: z.literal(['pull', 'wrap']), requiredLimit: ratedLoad, length }),
  ] as const;
  const task = withFaults(z.discriminatedUnion('kind', tasks), (value, issue) =>
    issue.code === 'invalid_union'
      ? [
          {
            ...wrongWord((issue.options as string[]).join(', '), 'UNKNOWN_VALUE', fieldOf(value, 'kind')),
            at: ['kind'],
          },
        ]
      : [fault('MISSING_FIELD', 'a task { kind, ... }', value, 'Give the task with its fields.')],
  );
  const priced = fields('a price', { size: tradeSize, grade, price, per: length });
  return fields('a request', {
    task,
    ratings: optional(ratings),
    objective: word(['mass', 'price', 'mass-per-limit']),
    prices: optional(list(priced, 1, 'at least one price')),
    carryLimit: optional(mass),
    hook: optional(
      fields('a hook', {
        kind: word(['grab-hook', 'slip-hook']),
        size: tradeSize,
        grade: optional(grade),
        latch: optional(flag()),
        opening: optional(length),
      }),
    ),
    grades: optional(list(grade, 1, 'at least one grade')),
    units: optional(word(['us', 'si'])),
    working: optional(flag()),
  });
});
