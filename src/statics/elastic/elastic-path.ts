import { type Loading, steadyWrench } from '../rigid-load.js';
import type { Vec3 } from '../vector.js';
import { type ContactMode, facetSlack, facetsOf, OPEN } from './contact-law.js';
import { type ElasticModel, type ElasticState, emptyState, type Standing } from './elastic-model.js';
import { type Modes, type Rates, solveRates } from './elastic-rates.js';
import { addTo, inner } from './linear-equations.js';

/** A stretch of the path on which everything changes in proportion to the factor. */
export interface Stretch {
  readonly from: number;
  readonly length: number;
  /** At its start. It is overwritten when the path goes on. */
  readonly state: ElasticState;
  readonly rates: Rates;
}

export type PathEnd =
  | { readonly outcome: 'reached'; readonly state: ElasticState; readonly contacts: ArrayLike<ContactMode> }
  /** At this factor nothing stiff is left that resists, now or after a shift: a mechanism. */
  | { readonly outcome: 'gives-way'; readonly factor: number; readonly motion: Float64Array }
  /** The steady load finds no rest. */
  | { readonly outcome: 'impossible'; readonly motion: Float64Array }
  | { readonly outcome: 'not-solved' };

const MOST_EVENTS = 400;
/** Events closer together than this, relative, are one. */
const SAME_EVENT = 1e-11;
/** A facet of the friction polygon is touched from this close, in weights. */
const TOUCH = 1e-11;
/** Slower than this nothing comes to an event. */
const LEAST_RATE = 1e-12;
/** In a shift no force may change by more than this part of the weight; else it is no shift. */
const NO_SHIFT_FORCE = 1e-9;
/** A force below this part of the weight is none. */
const NO_FORCE = 1e-13;

export type Rest =
  | { readonly outcome: 'rests'; readonly state: ElasticState; readonly modes: Modes }
  | Extract<PathEnd, { outcome: 'impossible' | 'not-solved' }>;

/**
 * The load from its assembly to rest. At assembly nothing bears anything; then the steady load and the pretensions come on
 * together and in proportion, which is one linear stretch, since all gaps start from zero.
 */
export function settle(model: ElasticModel, loading: Loading): Rest {
  const state = emptyState(model);
  const pretensions = model.members.map(({ pretension }) => pretension);
  const steady = Float64Array.from(steadyWrench(model.load, loading));
  const settling = solveRates(model, standingOf(model, state), steady, undefined, pretensions);
  if (settling.outcome === 'free') return { outcome: 'impossible', motion: settling.motion };
  if (settling.outcome !== 'moves') return settling;
  advance(state, settling.rates, 1);
  dropRounding(model, state);
  state.motion.fill(0);
  return { outcome: 'rests', state, modes: settling.rates.modes };
}

/**
 * The load from rest to a factor. The varying load grows, and the path is straight from event to event: a member goes slack or taut, a contact
 * opens or closes, starts to slide, or reaches the next facet of the friction polygon. Events are computed exactly, one
 * after the other. A load that nothing holds shifts, at the same factor, until a slack member tightens or a lifted
 * contact closes; where none ever does, it gives way.
 */
export function followPath(
  model: ElasticModel,
  rest: Rest,
  loading: Loading,
  upTo: number,
  visit?: (stretch: Stretch) => void,
): PathEnd {
  if (rest.outcome !== 'rests') return rest;
  const state = copyState(rest.state);
  const side = sideOf(loading.varying);
  let { modes } = rest;
  let factor = 0;
  for (let event = 0; event < MOST_EVENTS; event++) {
    if (factor >= upTo) return { outcome: 'reached', state, contacts: modes.contacts };
    const standing = standingOf(model, state);
    const next = solveRates(model, standing, side, modes);
    if (next.outcome === 'free') {
      if (shift(model, state, standing, next.motion)) continue;
      return { outcome: 'gives-way', factor, motion: next.motion };
    }
    if (next.outcome !== 'moves') return next;
    const { rates } = next;
    const events = eventsOf(model, state, standing, rates);
    const nearest = events.reduce((least, { after }) => Math.min(least, after), upTo - factor);
    visit?.({ from: factor, length: nearest, state, rates });
    advance(state, rates, nearest);
    for (const { after, values, index } of events) {
      if (values !== undefined && after <= nearest * (1 + SAME_EVENT) + 1e-15) values[index] = 0;
    }
    dropRounding(model, state);
    modes = rates.modes;
    factor = nearest === upTo - factor ? upTo : factor + nearest;
  }
  return { outcome: 'not-solved' };
}

const sideOf = ([x, y, z]: Vec3): Float64Array => new Float64Array([x, y, z, 0, 0, 0]);

const copyState = ({ members, normals, shears, motion }: ElasticState): ElasticState => ({
  members: members.slice(),
  normals: normals.slice(),
  shears: shears.slice(),
  motion: motion.slice(),
});

function advance(state: ElasticState, rates: ElasticState, by: number): void {
  for (let index = 0; index < state.members.length; index++) state.members[index]! += by * rates.members[index]!;
  for (let index = 0; index < state.normals.length; index++) state.normals[index]! += by * rates.normals[index]!;
  for (let index = 0; index < state.shears.length; index++) state.shears[index]! += by * rates.shears[index]!;
  addTo(state.motion, rates.motion, by);
}

/** Forces that are nothing but rounding are none, and a contact without force has no friction either. */
function dropRounding({ friction }: ElasticModel, { members, normals, shears }: ElasticState): void {
  for (let index = 0; index < members.length; index++) if (Math.abs(members[index]!) < NO_FORCE) members[index] = 0;
  for (let index = 0; index < normals.length; index++) {
    if (Math.abs(normals[index]!) < NO_FORCE) normals[index] = 0;
    if (normals[index]! <= 0 && friction !== 'sticking') shears.fill(0, 2 * index, 2 * index + 2);
  }
}

/**
 * Moves a load that nothing holds until a slack member tightens or a lifted contact closes; false when none ever does,
 * or when what bears would feel it. Forces stay as they are, only gaps change.
 */
function shift(model: ElasticModel, state: ElasticState, standing: Standing, motion: Float64Array): boolean {
  const memberRates = model.members.map(({ direction, stiffness }) => -stiffness * inner(direction, motion));
  const normalRates = model.contacts.map(
    ({ directions, normalStiffness }) => -normalStiffness * inner(directions[2], motion),
  );
  const held = Math.max(0, ...pressed(standing.members, memberRates), ...pressed(standing.contacts, normalRates));
  let first = Number.POSITIVE_INFINITY;
  let land = () => {};
  const close = (values: Float64Array, standings: Int8Array, rates: readonly number[]) => {
    for (const [index, rate] of rates.entries()) {
      const after = -values[index]! / rate;
      if (standings[index]! >= 0 || rate < LEAST_RATE || after >= first) continue;
      first = after;
      land = () => {
        values[index] = 0;
      };
    }
  };
  close(state.members, standing.members, memberRates);
  close(state.normals, standing.contacts, normalRates);
  if (first === Number.POSITIVE_INFINITY || first * held > NO_SHIFT_FORCE) return false;
  const open = (values: Float64Array, standings: Int8Array, rates: readonly number[]) => {
    for (const [index, rate] of rates.entries()) {
      if (standings[index]! <= 0) values[index] = Math.min(0, values[index]! + first * rate);
    }
  };
  open(state.members, standing.members, memberRates);
  open(state.normals, standing.contacts, normalRates);
  addTo(state.motion, motion, first);
  land();
  dropRounding(model, state);
  return true;
}

/** How fast the forces of those that bear would change. */
const pressed = (standings: Int8Array, rates: readonly number[]) =>
  rates.filter((_, index) => standings[index]! > 0).map(Math.abs);

function standingOf({ contacts, polygon }: ElasticModel, state: ElasticState): Standing {
  const touching = contacts.map(({ friction, shearStiffness }, index) => {
    const normal = state.normals[index]!;
    if (!(normal > 0) || shearStiffness === 0 || polygon.normals.length === 0) return NO_FACETS;
    return polygon.normals.flatMap((_, facet) => {
      const slack = facetSlack(
        polygon,
        friction * normal,
        facet,
        state.shears[2 * index]!,
        state.shears[2 * index + 1]!,
      );
      return slack <= TOUCH ? [facet] : [];
    });
  });
  return {
    members: signsOf(state.members),
    contacts: signsOf(state.normals),
    touching,
  };
}

function signsOf(values: Float64Array): Int8Array {
  const signs = new Int8Array(values.length);
  for (let index = 0; index < values.length; index++) signs[index] = Math.sign(values[index]!);
  return signs;
}

const NO_FACETS: readonly number[] = [];

interface Event {
  readonly after: number;
  /** What comes to zero, and is put exactly there; a contact that reaches a facet needs nothing put. */
  readonly values?: Float64Array;
  readonly index: number;
}

function eventsOf(model: ElasticModel, state: ElasticState, standing: Standing, rates: Rates): Event[] {
  const events: Event[] = [];
  crossings(events, state.members, rates.members);
  crossings(events, state.normals, rates.normals);
  const { polygon } = model;
  if (polygon.normals.length === 0) return events;
  for (const [index, { friction, shearStiffness }] of model.contacts.entries()) {
    const mode = rates.modes.contacts[index]!;
    if (shearStiffness === 0 || mode === OPEN) continue;
    const here = standing.touching[index]!;
    const slidOn = facetsOf(mode, polygon.normals.length);
    const [x, y] = [2 * index, 2 * index + 1];
    for (let facet = 0; facet < polygon.normals.length; facet++) {
      if (here.includes(facet) || slidOn.includes(facet)) continue;
      const slack = facetSlack(polygon, friction * state.normals[index]!, facet, state.shears[x]!, state.shears[y]!);
      const rate = facetSlack(polygon, friction * rates.normals[index]!, facet, rates.shears[x]!, rates.shears[y]!);
      if (rate < -LEAST_RATE) events.push({ after: Math.max(0, slack) / -rate, index });
    }
  }
  return events;
}

function crossings(events: Event[], values: Float64Array, rates: Float64Array): void {
  for (let index = 0; index < values.length; index++) {
    const value = values[index]!;
    const rate = rates[index]!;
    if (value * rate < 0 && Math.abs(rate) >= LEAST_RATE) events.push({ after: -value / rate, values, index });
  }
}
