// Named re-exports only: what is not named here is not public.

export { checkJson, type JsonCheck, readJson } from './check-json.js';
export {
  chainHistorySchema,
  chainMeasurementsSchema,
  forecastRetirementRequestSchema,
  housePolicySchema,
  inspectChainRequestSchema,
} from './inspection.js';
export { buildKitRequestSchema, chooseChainRequestSchema, kitItemSchema } from './kit.js';
export { partSchema } from './part.js';
export { articleSchema, planSchema, tieDownSchema, vehicleSchema } from './plan.js';
export {
  availablePullRequestSchema,
  hitchStabilityRequestSchema,
  planPullRequestSchema,
  pullChainLengthRequestSchema,
  pullResistanceRequestSchema,
  shockTensionRequestSchema,
} from './pulling-requests.js';
export { type QuantitySchemaOptions, quantitySchema } from './quantity.js';
export {
  assemblyRatingRequestSchema,
  chainRatingRequestSchema,
  checkSecurementRequestSchema,
  compareRulesRequestSchema,
  proposeTieDownsRequestSchema,
  solveRestraintRequestSchema,
  tieDownLengthRequestSchema,
  tieDownsRequiredRequestSchema,
} from './requests.js';
