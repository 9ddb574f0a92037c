import * as z from 'zod';
import { build, fields, list, optional } from './fields.js';
import { partList } from './part.js';
import {
  angle,
  bridle,
  chainAngle,
  ends,
  engine,
  hitch,
  load,
  nothingOrMore,
  plainNumber,
  rolling,
  snatchedLoad,
  standoff,
  takeUp,
  traction,
  tractor,
} from './pulling.js';
import { force, length, mass, ratedLoad } from './quantity.js';
import { options, ratings } from './requests.js';

/** What concerns the tractor alone. */
const onTractor = /* @__PURE__ */ build(() => ({
  tractor,
  hitch,
  traction,
  rolling: optional(rolling),
  engine: optional(engine),
  chainAngle: optional(chainAngle),
  slope: optional(angle),
}));

const judged = /* @__PURE__ */ build(() => ({
  steeringReserve: optional(plainNumber(z.number().gt(0).lt(1), 'a number above 0 and below 1', 1)),
  friction: optional(plainNumber(z.number().gt(0).lt(2), 'a number above 0 and below 2', 2)),
  rearAxleHeight: optional(length),
}));

const dangerMargin = /* @__PURE__ */ build(() =>
  optional(plainNumber(z.number().min(1).max(100), 'a number from 1 to 100', 100, 'UNKNOWN_VALUE')),
);
const proofFactor = /* @__PURE__ */ build(() =>
  optional(plainNumber(z.number().gt(1).max(10), 'a number above 1, up to 10', 10)),
);

/**
 * The body of a request for `availablePull`.
 *
 * @example
 * const body = readJson(availablePullRequestSchema, {
 *   tractor: { mass: '3300 lb', frontAxleMass: '1155 lb', wheelbase: '64 in', drive: 'rear-wheels' },
 *   hitch: { kind: 'drawbar', height: '15 in' },
 *   traction: { coefficient: 0.55, kind: 'net' },
 *   rolling: { coefficient: 0.05 },
 * });
 * availablePull(body).governs
 * // => 'traction'
 */
export const availablePullRequestSchema = /* @__PURE__ */ build(() =>
  fields('a request', { ...onTractor, weightOnHitch: optional(force), ...options }),
);

/**
 * The body of a request for `pullResistance`.
 *
 * @example
 * const check = checkJson(pullResistanceRequestSchema, { kind: 'mired', depth: 'hub', mass: '3300 lbs' });
 * if (!check.ok) for (const { path, code } of check.issues) console.log(`${path}: ${code}`);
 * // => depth: UNKNOWN_VALUE
 * //    mass: UNKNOWN_UNIT
 */
export const pullResistanceRequestSchema = /* @__PURE__ */ build(() => load(options));

/**
 * The body of a request for `hitchStability`.
 *
 * @example
 * const check = checkJson(hitchStabilityRequestSchema, {
 *   tractor: { mass: '3300 lb', wheelbase: '64 in', drive: 'rear-wheels' },
 *   hitch: { kind: 'drawbar', height: '15 in' },
 * });
 * if (!check.ok) console.log(check.issues[0].code, check.issues[0].path);
 * // => MISSING_FIELD tractor.frontAxleMass
 */
export const hitchStabilityRequestSchema = /* @__PURE__ */ build(() =>
  fields('a request', {
    tractor,
    hitch,
    pull: optional(force),
    slope: optional(angle),
    chainAngle: optional(chainAngle),
    weightOnHitch: optional(force),
    ...judged,
    frontPivotHeight: optional(length),
    sidePull: optional(fields('a pull to the side', { fromStraight: angle })),
    sideSlope: optional(angle),
    ...options,
  }),
);

/**
 * The body of a request for `shockTension`.
 *
 * @example
 * const body = readJson(shockTensionRequestSchema, {
 *   towingMass: '3000 kg', load: 'anchored', takeUp: { speed: '1 m/s' }, chain: { wireDiameter: '10 mm', length: '6 m' },
 * });
 * shockTension(body).verdict
 * // => 'undetermined'
 */
export const shockTensionRequestSchema = /* @__PURE__ */ build(() => {
  const spring = fields('something that gives', { by: length, under: force });
  return fields('a request', {
    towingMass: mass,
    load: snatchedLoad,
    takeUp,
    thrust: optional(nothingOrMore('force')),
    chain: fields('a chain', { wireDiameter: length, length }),
    inSeries: optional(list(spring, 0, 'a list of what gives')),
    workingLoadLimit: optional(ratedLoad),
    proofLoad: optional(ratedLoad),
    proofFactor,
    breakingForce: optional(force),
    elongationAtBreak: optional(plainNumber(z.number().gt(0).max(1), 'a number above 0, up to 1', 1)),
    ...options,
  });
});

/**
 * The body of a request for `pullChainLength`.
 *
 * @example
 * const body = readJson(pullChainLengthRequestSchema, {
 *   ends: [{ at: 'hook' }, { at: 'choker', diameter: '16 in', tail: '2 ft' }],
 *   standoff: '20 ft', pitch: '1.125 in', wireDiameter: '0.394 in',
 * });
 * pullChainLength(body).links
 * // => 284
 */
export const pullChainLengthRequestSchema = /* @__PURE__ */ build(() =>
  fields('a request', {
    ends,
    standoff: optional(standoff),
    pitch: length,
    wireDiameter: optional(length),
    outsideWidth: optional(length),
    dangerMargin,
    ...options,
  }),
);

/**
 * The body of a request for `planPull`, the rating table as a text id.
 *
 * @example
 * const body = readJson(planPullRequestSchema, {
 *   ratings: 'us-49cfr393-108-2024',
 *   tractor: { mass: '3300 lb', frontAxleMass: '1155 lb', wheelbase: '64 in', drive: 'rear-wheels' },
 *   hitch: { kind: 'drawbar', height: '15 in' },
 *   traction: { coefficient: 0.55, kind: 'net' },
 *   rolling: { coefficient: 0.05 },
 *   load: { kind: 'rolling', mass: '4000 lb', rolling: { coefficient: 0.15 } },
 *   rigging: [
 *     { id: 'drawbar', kind: 'anchor', at: 'vehicle', markedWll: '4000 lb' },
 *     { id: 'chain', kind: 'chain', size: '1/4', grade: 70 },
 *     { id: 'tow hook', kind: 'anchor', at: 'cargo', markedWll: '5000 lb' },
 *   ],
 *   chain: { pitch: '0.88 in', length: '20 ft' },
 *   ends: [{ at: 'hook' }, { at: 'hook' }],
 *   standoff: '18 ft',
 *   steeringReserve: 0.2,
 *   takeUp: 'slow',
 * });
 * planPull({ ...body, ratings: ratingTableById(body.ratings) }).verdict
 * // => 'pass'
 */
export const planPullRequestSchema = /* @__PURE__ */ build(() =>
  fields('a request', {
    ...onTractor,
    load: load({}),
    ratings,
    rigging: optional(partList()),
    atLoad: optional(partList()),
    chain: fields('a chain', { pitch: length, wireDiameter: optional(length), length: optional(length) }),
    ends,
    standoff: optional(standoff),
    dangerMargin,
    bridle: optional(fields('a bridle', { angles: bridle, parts: optional(partList()) })),
    takeUp,
    proofFactor,
    ...judged,
    ...options,
  }),
);
