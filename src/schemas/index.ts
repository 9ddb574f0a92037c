// Named re-exports only: what is not named here is not public.

export { checkJson, type JsonCheck, readJson } from './check-json.js';
export { buildKitRequestSchema, chooseChainRequestSchema, kitItemSchema } from './kit.js';
export { partSchema } from './part.js';
export { articleSchema, planSchema, tieDownSchema, vehicleSchema } from './plan.js';
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
