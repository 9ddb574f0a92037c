import { CHAIN_GRADES, INCH_SIZES } from 'chain-rigging';
import * as z from 'zod';

/**
 * The library's plan as anyone would write it in zod: every field of the type `Plan`, plain objects, numbers and
 * enums, no transforms and no text to parse. It stands beside `checkSecurement` as the yardstick, not as part of
 * the library. `make(z.strictObject)` gives the schema that also refuses unknown fields.
 */
export function makePlainPlanSchema(object: typeof z.object | typeof z.strictObject) {
  const mass = object({ value: z.number(), unit: z.enum(['lb', 'kg', 't', 'short-ton', 'long-ton']) });
  const force = object({ value: z.number(), unit: z.enum(['lbf', 'N', 'kN', 'daN', 'kgf', 'kip']) });
  const rated = object({
    value: z.number(),
    unit: z.enum(['lb', 'kg', 't', 'short-ton', 'long-ton', 'lbf', 'N', 'kN', 'daN', 'kgf', 'kip']),
  });
  const length = object({ value: z.number(), unit: z.enum(['ft', 'in', 'yd', 'm', 'cm', 'mm', 'km', 'mi']) });
  const point = z.tuple([length, length, length]);
  const size = z.enum(INCH_SIZES);
  const grade = z.literal([...CHAIN_GRADES, '4', '5', '8']);
  const capacities = object({
    workingLoadLimit: rated.optional(),
    lashingCapacity: rated.optional(),
    maximumSecuringLoad: rated.optional(),
    standardTensionForce: force.optional(),
    ratedStrength: rated.optional(),
    breakingStrength: rated.optional(),
  });
  const common = {
    id: z.string(),
    markedWll: rated.optional(),
    capacities: capacities.optional(),
    condition: z.enum(['sound', 'damaged']).optional(),
  };
  const part = z.discriminatedUnion('kind', [
    object({ ...common, kind: z.literal('chain'), size, grade: grade.optional() }),
    object({
      ...common,
      kind: z.enum(['grab-hook', 'slip-hook', 'connecting-link', 'master-link', 'clevis']),
      size: size.optional(),
      grade: grade.optional(),
      latch: z.boolean().optional(),
    }),
    object({
      ...common,
      kind: z.enum(['binder', 'shackle', 'turnbuckle', 'winch']),
      size: z.string().optional(),
      style: z.enum(['lever', 'ratchet']).optional(),
    }),
    object({ ...common, kind: z.literal('webbing'), width: z.string().optional() }),
    object({ ...common, kind: z.literal('wire-rope'), size: z.string().optional(), nominalStrength: force.optional() }),
    object({ ...common, kind: z.literal('fiber-rope'), size: z.string().optional(), material: z.string().optional() }),
    object({ ...common, kind: z.literal('strapping'), width: z.string().optional(), thickness: z.string().optional() }),
    object({ ...common, kind: z.literal('anchor'), at: z.enum(['vehicle', 'cargo']) }),
  ]);
  const flag = z.boolean().optional();
  return object({
    vehicle: object({
      units: z.array(
        object({
          id: z.string(),
          kind: z.enum(['power', 'towed']),
          grossWeightRating: mass.optional(),
          grossWeight: mass.optional(),
        }),
      ),
      deck: object({ length, width: length }).optional(),
      combinationRatingOnLabel: mass.optional(),
      interstateCommerce: flag,
    }).optional(),
    seaArea: z.enum(['A', 'B', 'C']).optional(),
    articles: z.array(
      object({
        id: z.string(),
        kind: z.enum(['machinery', 'light-vehicle', 'general']),
        mass,
        length,
        blockedForward: flag,
        accessories: z.array(object({ id: z.string(), lowered: flag, locked: flag })).optional(),
        articulated: flag,
        articulationLocked: flag,
        securedUnder: z.enum(['393.110', '393.128', '393.130']).optional(),
        specialMethods: flag,
        frictionMat: object({ massOnMat: mass, ratedResistance: rated.optional() }).optional(),
        centerOfGravity: point.optional(),
        contacts: z
          .array(
            object({
              at: point,
              friction: z.number().optional(),
              gives: object({ by: length, under: force }).optional(),
            }),
          )
          .optional(),
        friction: z.number().optional(),
        surfaces: object({
          load: z.string(),
          deck: z.string(),
          condition: z.enum(['dry', 'wet', 'frost']).optional(),
        }).optional(),
        headboard: z.enum(['none', 'partial', 'adequate']).optional(),
        shipForces: object({ longitudinal: force.optional(), transverse: force.optional() }).optional(),
        outline: z.tuple([point, point]).optional(),
      }),
    ),
    tieDowns: z.array(
      object({
        id: z.string(),
        holds: z.string(),
        path: z.enum(['vehicle-to-cargo', 'over-same-side', 'over-other-side']),
        end: z.enum(['front', 'rear']).optional(),
        anchor: point.optional(),
        attachment: point.optional(),
        otherAttachment: point.optional(),
        otherAnchor: point.optional(),
        pretension: force.optional(),
        axialStiffness: force.optional(),
        parts: z.array(part).optional(),
        capacities: capacities.optional(),
      }),
    ),
  });
}
