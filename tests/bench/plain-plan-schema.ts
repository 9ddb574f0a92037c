import * as z from 'zod';

/**
 * The plan of the benchmark as anyone would write it in zod: plain objects, numbers and enums, no transforms
 * and no text to parse. It stands beside `checkSecurement` as the yardstick, not as part of the library.
 */
const rated = z.object({ value: z.number(), unit: z.enum(['lb', 'kg', 't', 'lbf', 'N', 'kN', 'daN']) });
const mass = z.object({ value: z.number(), unit: z.enum(['lb', 'kg', 't']) });
const length = z.object({ value: z.number(), unit: z.enum(['ft', 'in', 'm', 'mm']) });
const size = z.enum(['1/4', '5/16', '3/8', '7/16', '1/2', '5/8']);
const grade = z.number();

const part = z.discriminatedUnion('kind', [
  z.object({ id: z.string(), kind: z.literal('chain'), size, grade: grade.optional(), markedWll: rated.optional() }),
  z.object({
    id: z.string(),
    kind: z.enum(['grab-hook', 'slip-hook']),
    size: size.optional(),
    grade: grade.optional(),
    markedWll: rated.optional(),
  }),
  z.object({ id: z.string(), kind: z.literal('binder'), size: z.string().optional(), markedWll: rated.optional() }),
  z.object({
    id: z.string(),
    kind: z.literal('anchor'),
    at: z.enum(['vehicle', 'cargo']),
    markedWll: rated.optional(),
  }),
]);

export const plainPlanSchema = z.object({
  articles: z.array(
    z.object({
      id: z.string(),
      kind: z.enum(['machinery', 'light-vehicle', 'general']),
      mass,
      length,
      blockedForward: z.boolean().optional(),
    }),
  ),
  tieDowns: z.array(
    z.object({
      id: z.string(),
      holds: z.string(),
      path: z.enum(['vehicle-to-cargo', 'over-same-side', 'over-other-side']),
      end: z.enum(['front', 'rear']).optional(),
      parts: z.array(part),
    }),
  ),
});
