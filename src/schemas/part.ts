import * as z from 'zod';
import type { Part } from '../assembly/part.js';
import { CHAIN_GRADES, EUROPEAN_CLASSES, INCH_SIZES, isTradeSize, type TradeSize } from '../chain/trade-size.js';
import {
  build,
  claimIds,
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
import { force, ratedLoad } from './quantity.js';

/** A trade size as written: inches from the list, or a metric size. */
export const tradeSize = /* @__PURE__ */ build(() => {
  const written = z.union([z.enum(INCH_SIZES), z.string().regex(/^[0-9]{1,2}(?:\.[0-9])? mm$/)]);
  const expected = `a trade size: ${INCH_SIZES.join(', ')}, or millimeters such as '8 mm'`;
  const faults = (value: unknown) => (isTradeSize(value) ? [] : [wrongWord(expected, 'UNKNOWN_SIZE', value)]);
  return withFaults(written, faults) as unknown as z.ZodType<TradeSize, TradeSize>;
});

export const grade = /* @__PURE__ */ build(() =>
  withFaults(z.literal(CHAIN_GRADES), (value) => [
    wrongWord(`one of the numbers ${CHAIN_GRADES.join(', ')}`, 'UNKNOWN_GRADE', value),
  ]),
);

/** A grade of either market: a number, or a European class as text. */
export const anyGrade = /* @__PURE__ */ build(() =>
  withFaults(z.union([z.literal(CHAIN_GRADES), z.enum(EUROPEAN_CLASSES)]), (value) => [
    wrongWord(`one of the numbers ${CHAIN_GRADES.join(', ')}`, 'UNKNOWN_GRADE', value),
  ]),
);

export const capacities = /* @__PURE__ */ build(() =>
  fields('capacities { workingLoadLimit, ... }', {
    workingLoadLimit: optional(ratedLoad),
    lashingCapacity: optional(ratedLoad),
    maximumSecuringLoad: optional(ratedLoad),
    standardTensionForce: optional(force),
    ratedStrength: optional(ratedLoad),
    breakingStrength: optional(ratedLoad),
  }),
);

/** In words, or the result of an inspection, of which only the verdict is taken over. */
const condition = /* @__PURE__ */ build(() =>
  withFaults(
    z.union([z.enum(['sound', 'damaged']), z.object({ verdict: z.enum(['fit', 'remove', 'undetermined']) })]),
    (value) => [
      fault(
        'UNKNOWN_VALUE',
        "'sound', 'damaged' or an inspection result",
        value,
        'Leave it out when the part was inspected and is sound.',
      ),
    ],
  ),
);

/** A point that a tie-down is fixed to, where nothing else is listed. */
export const anchorPart = /* @__PURE__ */ build(() =>
  fields('an anchor', {
    id: name(),
    kind: withFaults(z.literal('anchor'), (value) => [
      fault('UNKNOWN_VALUE', 'anchor', value, 'Only anchor points are listed here.'),
    ]),
    at: word(['vehicle', 'cargo']),
    markedWll: optional(ratedLoad),
    capacities: optional(capacities),
    condition: optional(condition),
  }),
);

/**
 * A part of an assembly, for every kind of part; `parallel` holds legs that are lists of parts themselves.
 *
 * @example
 * const check = checkJson(partSchema, { id: 'chain', kind: 'chain', size: '5/8 in', grade: 71 });
 * if (!check.ok) console.log(check.issues.map(({ code }) => code));
 * // => [ 'UNKNOWN_SIZE', 'UNKNOWN_GRADE' ]
 */
export const partSchema = /* @__PURE__ */ build(() => {
  const base = {
    id: name(),
    markedWll: optional(ratedLoad),
    capacities: optional(capacities),
    condition: optional(condition),
  };
  const size = optional(text('a size as the table writes it'));
  const parts = [
    fields('a chain', { ...base, kind: z.literal('chain'), size: tradeSize, grade: optional(anyGrade) }),
    fields('a webbing', { ...base, kind: z.literal('webbing'), width: size }),
    fields('a wire rope', { ...base, kind: z.literal('wire-rope'), size, nominalStrength: optional(force) }),
    fields('a fiber rope', {
      ...base,
      kind: z.literal('fiber-rope'),
      size,
      material: optional(text('a material as the table writes it')),
    }),
    fields('a strapping', { ...base, kind: z.literal('strapping'), width: size, thickness: size }),
    fields('a fitting', {
      ...base,
      kind: z.literal(['grab-hook', 'slip-hook', 'connecting-link', 'master-link', 'clevis']),
      size: optional(tradeSize),
      grade: optional(anyGrade),
      latch: optional(flag()),
    }),
    fields('a part with a mark', {
      ...base,
      kind: z.literal(['binder', 'shackle', 'turnbuckle', 'winch']),
      size,
      style: optional(word(['lever', 'ratchet'])),
    }),
    fields('an anchor', { ...base, kind: z.literal('anchor'), at: word(['vehicle', 'cargo']) }),
    fields('parts side by side', {
      kind: z.literal('parallel'),
      id: name(),
      get legs(): z.ZodArray<z.ZodArray<z.ZodType<Part, Part>>> {
        return list(partList(), 2, 'two legs or more');
      },
      loadSharing: word(['equal', 'one-leg']),
    }),
  ] as const;
  return withFaults(
    z.discriminatedUnion('kind', parts),
    (value, issue) =>
      issue.code === 'invalid_union'
        ? [
            {
              ...wrongWord((issue.options as string[]).join(', '), 'UNKNOWN_VALUE', fieldOf(value, 'kind')),
              at: ['kind'],
            },
          ]
        : [fault('MISSING_FIELD', 'a part { id, kind, ... }', value, 'Give the part with its fields.')],
    (part) =>
      fieldOf(part, 'markedWll') === undefined || fieldOf(fieldOf(part, 'capacities'), 'workingLoadLimit') === undefined
        ? []
        : [
            {
              code: 'CONFLICTING_FIELDS',
              expected: 'markedWll or capacities.workingLoadLimit',
              received: 'both',
              remedy: 'Give the marked limit once.',
              at: ['capacities', 'workingLoadLimit'],
            },
          ],
  );
});

/** Parts in series, every id once. */
export function partList() {
  return list(partSchema, 1, 'at least one part', (value) => {
    const claim = claimIds('Rename one of the two parts.');
    return itemsOf(value).flatMap((part, index) => claim(part, [index]));
  });
}
