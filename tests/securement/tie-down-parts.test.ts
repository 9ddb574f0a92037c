// The tie-down part by part, 49 CFR 393.104 and 393.108: weakest part, anchor points at both ends, damage, and the
// friction mat.
import type { Part, TieDown, TieDownPath } from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';
import {
  check,
  checkLoosely,
  checkOf,
  codes,
  crate,
  type Mass,
  machine,
  missingIn,
  ofParts,
  rated,
  reasonOf,
  rules,
  several,
} from './plans.js';

const chain: Part = { id: 'chain', kind: 'chain', size: '3/8', grade: 70 }; // 6,600 lb
const binder: Part = { id: 'binder', kind: 'binder', markedWll: '5400 lb' };
const onVehicle = (id: string, markedWll: '4000 lb' | '20000 lb' | undefined): Part => ({
  id,
  kind: 'anchor',
  at: 'vehicle',
  ...(markedWll === undefined ? {} : { markedWll }),
});
const onCargo = (id: string, markedWll: '4000 lb' | '20000 lb' | undefined): Part => ({
  id,
  kind: 'anchor',
  at: 'cargo',
  ...(markedWll === undefined ? {} : { markedWll }),
});
const tieDown = (parts: readonly Part[], path: TieDownPath = 'vehicle-to-cargo'): TieDown => ({
  id: 'one',
  holds: 'tractor',
  path,
  parts,
});
/** A single tie-down on a machine far too heavy for it, so that its rating is needed. */
const alone = (parts: readonly Part[], path?: TieDownPath) => check([machine()], [tieDown(parts, path)]);

describe('the weakest part, 393.108(a)', () => {
  it('is the least of chain, hooks, tensioner and anchor points', () => {
    const all = [
      chain,
      { id: 'hook', kind: 'grab-hook', size: '3/8', grade: 70 } as Part,
      binder,
      onVehicle('ring', '20000 lb'),
      onCargo('lug', '20000 lb'),
    ];
    expect(alone(all).tieDowns[0]).toMatchObject({
      rating: { value: 5400, unit: 'lb' },
      weakest: ['binder'],
    });
    expect(alone([...all.slice(0, 4), onCargo('lug', '4000 lb')]).tieDowns[0]).toMatchObject({
      rating: { value: 4000 },
      weakest: ['lug'],
    });
    expect(
      alone([...all.slice(0, 3), onVehicle('ring', '4000 lb'), onCargo('lug', '4000 lb')]).tieDowns[0]?.weakest,
    ).toEqual(['ring', 'lug']);
  });
  it('an unmarked chain counts as grade 30, and the result says so', () => {
    const result = alone([
      { id: 'chain', kind: 'chain', size: '3/8' },
      onVehicle('ring', '20000 lb'),
      onCargo('lug', '20000 lb'),
    ]);
    expect(result.tieDowns[0]?.rating).toEqual({ value: 2650, unit: 'lb' });
    expect(codes(result.assumptions)).toContain('UNMARKED_PART');
  });
  it('a strap and a chain count alike: the material plays no part in the credit', () => {
    const strap = alone(
      [{ id: 'strap', kind: 'webbing', width: '4' }, onVehicle('a', '20000 lb'), onVehicle('b', '20000 lb')],
      'over-other-side',
    );
    expect(strap.tieDowns[0]).toMatchObject({ rating: { value: 4000 }, credit: 1, counted: { value: 4000 } });
  });
});

describe('anchor points', () => {
  it('that are not listed are missing, at each end', () => {
    expect(missingIn(checkOf(alone([chain, binder]), '393.108(a)/tractor'))).toEqual([
      'ANCHOR_NOT_LISTED',
      'ANCHOR_NOT_LISTED',
    ]);
    expect(missingIn(checkOf(alone([chain, onVehicle('ring', '20000 lb')]), '393.108(a)/tractor'))).toEqual([
      'ANCHOR_NOT_LISTED',
    ]);
    expect(missingIn(checkOf(alone([chain, onCargo('lug', '20000 lb')]), '393.108(a)/tractor'))).toEqual([
      'ANCHOR_NOT_LISTED',
    ]);
  });
  it('that are not listed are asked for by their side', () => {
    const sides = (parts: readonly Part[]) => {
      const found = checkOf(alone(parts), '393.108(a)/tractor');
      return found.verdict === 'undetermined' ? found.missing.map(({ params }) => params.at) : [];
    };
    expect(sides([chain])).toEqual(['vehicle', 'cargo']);
    expect(sides([chain, onVehicle('ring', '20000 lb')])).toEqual(['cargo']);
    expect(sides([chain, onCargo('lug', '20000 lb')])).toEqual(['vehicle']);
  });
  it('that are listed without a rating are missing', () => {
    expect(
      missingIn(checkOf(alone([chain, onVehicle('ring', undefined), onCargo('lug', undefined)]), '393.108(a)/tractor')),
    ).toEqual(['ANCHOR_NOT_RATED', 'ANCHOR_NOT_RATED']);
  });
  test.each(['over-same-side', 'over-other-side'] as const)('%s: two on the vehicle', (path) => {
    expect(missingIn(checkOf(alone([chain], path), '393.108(a)/tractor'))).toEqual(['ANCHOR_NOT_LISTED']);
    expect(missingIn(checkOf(alone([chain, onVehicle('a', '20000 lb')], path), '393.108(a)/tractor'))).toEqual([
      'ANCHOR_NOT_LISTED',
    ]);
    expect(
      missingIn(
        checkOf(alone([chain, onVehicle('a', '20000 lb'), onCargo('b', '20000 lb')], path), '393.108(a)/tractor'),
      ),
    ).toEqual(['ANCHOR_NOT_LISTED']);
    expect(
      checkOf(alone([chain, onVehicle('a', '20000 lb'), onVehicle('b', '20000 lb')], path), '393.108(a)/tractor')
        .verdict,
    ).toBe('pass');
  });
  it('never become a pass: the tie-down has no rating, only a ceiling', () => {
    // Enough by the chain: 2 × 6,600/2 ≥ 4,000; but nobody knows the rings.
    const result = check([machine()], [tieDown([chain]), { ...tieDown([chain]), id: 'two' }]);
    expect(result.verdict).toBe('undetermined');
    expect(result.tieDowns.map(({ rating }) => rating)).toEqual([null, null]);
  });
  it('name the tie-down they belong to', () => {
    const found = checkOf(alone([chain]), '393.108(a)/tractor');
    expect(found.verdict === 'undetermined' && found.missing.every(({ text }) => text.includes('one'))).toBe(true);
  });
  it('may stand in the legs of a bridle', () => {
    // One ring on the vehicle, two legs to two lugs on the cargo: every anchor point is listed and rated.
    const leg = (at: number): Part[] => [
      { id: `leg-${at}`, kind: 'chain', size: '3/8', grade: 70 },
      onCargo(`lug-${at}`, '20000 lb'),
    ];
    const bridle: Part = { id: 'bridle', kind: 'parallel', loadSharing: 'one-leg', legs: [leg(1), leg(2)] };
    expect(alone([onVehicle('ring', '20000 lb'), binder, bridle]).tieDowns[0]).toMatchObject({
      rating: { value: 5400, unit: 'lb' },
    });
  });
});

describe('damage, 393.104(b)', () => {
  const broken = (id: string, more: Partial<TieDown> = {}) => ofParts(id, [{ ...chain, condition: 'damaged' }], more);

  it('fails, counts zero in strength and not in number', () => {
    const result = check([machine()], [broken('bad'), rated('good', '8000 lb')]);
    expect(result.articles[0]).toMatchObject({ count: 1, aggregate: { value: 4000, unit: 'lb' } });
    expect(result.tieDowns[0]?.counted?.value).toBe(0);
    expect(checkOf(result, '393.110/tractor')).toMatchObject({ verdict: 'fail', demand: 2, capacity: 1 });
    expect(checkOf(result, '393.104(b)/tie-downs').verdict).toBe('fail');
    expect(result.verdict).toBe('fail');
  });
  it('fails even where the others are enough in strength and number', () => {
    const result = check([machine()], [...several(4, '8000 lb'), broken('bad')]);
    expect(checkOf(result, '393.106(d)/tractor').verdict).toBe('pass');
    expect(checkOf(result, '393.110/tractor').verdict).toBe('pass');
    expect(result).toMatchObject({ verdict: 'fail', governing: '393.104(b)/tie-downs' });
    const found = checkOf(result, '393.104(b)/tie-downs');
    expect(reasonOf(found)).toBe('DAMAGED_PART');
    expect('because' in found && found.because.text).toMatch(/bad.*chain/);
  });
  it('keeps the performance criteria from being deemed met', () => {
    // 393.102(c)(3) deems them met for cargo secured under 393.104 to 393.136; 393.104(b) is not met.
    const result = check([machine()], [...several(4, '8000 lb'), broken('bad')]);
    expect(checkOf(result, '393.102(c)/tractor').verdict).not.toBe('pass');
    expect(checkOf(check([machine()], several(4, '8000 lb')), '393.102(c)/tractor').verdict).toBe('pass');
  });
  it('of an anchor point is damage too', () => {
    const anchors: Part[] = [
      { id: 'ring', kind: 'anchor', at: 'vehicle', markedWll: '20000 lb', condition: 'damaged' },
      onCargo('lug', '20000 lb'),
    ];
    expect(checkOf(alone([chain, ...anchors]), '393.104(b)/tie-downs').verdict).toBe('fail');
  });
  it('of an accessory tie-down is damage too', () => {
    const result = check(
      [machine({ accessories: [{ id: 'bucket', lowered: true, locked: true }] })],
      [...several(4, '8000 lb'), broken('bad', { holds: 'bucket' })],
    );
    expect(checkOf(result, '393.104(b)/tie-downs').verdict).toBe('fail');
  });
  it.each(['equal', 'one-leg'] as const)('in a leg of a bridle (%s) is damage too', (loadSharing) => {
    const leg = (at: number, condition: 'sound' | 'damaged'): Part[] => [
      { id: `leg-${at}`, kind: 'chain', size: '3/8', grade: 70, condition },
    ];
    const bridle: Part = { id: 'bridle', kind: 'parallel', loadSharing, legs: [leg(1, 'sound'), leg(2, 'damaged')] };
    const result = check([machine()], [...several(4, '8000 lb'), ofParts('bad', [bridle])]);
    expect(result.tieDowns[4]?.rating?.value).toBe(0);
    expect(result.articles[0]?.count).toBe(4);
    expect(checkOf(result, '393.104(b)/tie-downs').verdict).toBe('fail');
  });
  it('that is not decided leaves the plan undecided', () => {
    const doubtful = ofParts('doubtful', [{ ...chain, condition: { verdict: 'undetermined' } }]);
    const result = check([machine()], [...several(4, '8000 lb'), doubtful]);
    expect(missingIn(checkOf(result, '393.104(b)/tie-downs'))).toEqual(['CONDITION_UNDETERMINED']);
    expect(result.verdict).toBe('undetermined');
  });
  it('in a leg, not decided, leaves the plan undecided', () => {
    const bridle: Part = {
      id: 'bridle',
      kind: 'parallel',
      loadSharing: 'equal',
      legs: [[{ id: 'shackle', kind: 'shackle' }], [{ ...chain, condition: { verdict: 'undetermined' } }]],
    };
    expect(check([machine()], [...several(4, '8000 lb'), ofParts('doubtful', [bridle])]).verdict).toBe('undetermined');
  });
  it('found by an inspection', () => {
    expect(checkOf(alone([{ ...chain, condition: { verdict: 'remove' } }]), '393.104(b)/tie-downs').verdict).toBe(
      'fail',
    );
    expect(checkOf(alone([{ ...chain, condition: { verdict: 'fit' } }]), '393.104(b)/tie-downs').verdict).toBe('pass');
  });
});

describe('a friction mat, 393.108(g)', () => {
  const ask = (massOnMat: Mass, more: Record<string, unknown> = {}, units: 'us' | 'si' = 'us') =>
    check(
      [crate({ mass: '8000 lb', frictionMat: { massOnMat, ...more } })],
      several(2, '8000 lb', { holds: 'crate' }),
      { units },
    );
  const stepOf = (result: ReturnType<typeof ask>) => result.steps.find(({ symbol }) => symbol === 'mat resistance');

  it('without a rating resists with half of the weight on the mat, not of the whole', () => {
    expect(stepOf(ask('3000 lb'))?.result).toEqual({ value: 1500, unit: 'lb' });
    expect(stepOf(ask('3000 lb'))?.clause).toBe('49 CFR 393.108(g)');
    expect(stepOf(ask('1000 kg', {}, 'si'))?.result).toEqual({ value: 500, unit: 'kg' });
  });
  it('with a rating resists as marked', () => {
    expect(stepOf(ask('3000 lb', { ratedResistance: '2000 lb' }))?.result).toMatchObject({ value: 2000, unit: 'lb' });
  });
  it('adds nothing to the aggregate, and a caution says so', () => {
    const result = ask('3000 lb');
    expect(result.articles[0]?.aggregate).toEqual({ value: 8000, unit: 'lb' });
    expect(codes(result.cautions)).toContain('FRICTION_MAT_NOT_COUNTED');
  });
  it('cannot bear more than the whole weight', () => {
    expect(() => ask('8000 lb')).not.toThrow();
    expect(() => ask('8000.01 lb')).toThrowError(expect.objectContaining({ name: 'RiggingError' }));
  });
  it('is refused when it is none, with and without working', () => {
    for (const working of [true, false]) {
      const issue = (frictionMat: unknown) =>
        issueOf(() =>
          checkLoosely({
            rules,
            articles: [{ ...crate(), frictionMat }],
            tieDowns: several(2, '8000 lb', { holds: 'crate' }),
            working,
          }),
        );
      expect(issue({})).toMatchObject({ code: 'MISSING_FIELD', path: 'articles[0].frictionMat.massOnMat' });
      expect(issue(null).path).toContain('articles[0].frictionMat');
      expect(issue({ massOnMat: '0 lb' })).toMatchObject({
        code: 'NOT_POSITIVE',
        path: 'articles[0].frictionMat.massOnMat',
      });
      expect(issue({ massOnMat: '10 lb', ratedResistance: '1 ft' })).toMatchObject({
        code: 'WRONG_KIND',
        path: 'articles[0].frictionMat.ratedResistance',
      });
    }
  });
});
