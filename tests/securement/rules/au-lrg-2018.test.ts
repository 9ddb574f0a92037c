// Australia: Schedule 7 by the methods of the Load Restraint Guide. Every expected figure is worked by hand beside it.
import {
  type Article,
  auLrg_2018,
  checkSecurement,
  type Part,
  type QuantityInput,
  type QuantityLike,
  type SecurementCheck,
  type Step,
  type TieDown,
  type TieDownAsWhole,
  tieDownsRequired,
} from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../../quantities/issue-of.js';
import { checkOf, codes, missingIn, throughJson } from '../plans.js';
import { type Force, flat, type Heading, LENGTHS, type Load, mirrored, sloped, upright } from './runs.js';

const HEADINGS: readonly Heading[] = ['forward', 'rearward', 'left', 'right'];

function load(more: Partial<Article> = {}): Article {
  return { id: 'load', kind: 'general', mass: '1000 kg', length: '4 m', ...more };
}

function check(article: Partial<Article>, tieDowns: readonly TieDown[]): SecurementCheck {
  return checkSecurement({ rules: auLrg_2018, articles: [load(article)], tieDowns });
}

const verdictOf = (result: SecurementCheck, id: string) => checkOf(result, `${id}/load`).verdict;
const LC = (lashingCapacity: Load) => ({ lashingCapacity });
/** Strong in every heading: 100 kN flat, against 1000 kg. */
const four = HEADINGS.map((heading) => flat(heading, LC('100 kN')));
/** The four with others in the place of those that hold back the same heading. */
const with4 = (...others: readonly TieDown[]) => [
  ...four.filter(({ id }) => !others.some((other) => other.id === id)),
  ...others,
];

describe('direct tie-downs without friction: sum(LC · AE) ≥ a · W', () => {
  const A = { forward: 0.8, rearward: 0.5, left: 0.5, right: 0.5 };
  // each way to write it: the mass, and the unit of a lashing capacity of a · 1000 in it
  const forms: [form: keyof typeof LENGTHS, mass: QuantityInput<'mass'>, of: (thousandth: number) => Load][] = [
    ['inches', '1000 lb', (n) => `${n} lb`],
    ['metric text', '1000 kg', (n) => `${n} kg`],
    ['JSON', { value: 1, unit: 't' }, (n) => ({ value: n / 1000, unit: 't' })],
  ];
  for (const [form, mass, of] of forms) {
    test.each(HEADINGS)(`${form}, %s: at, just below, just above`, (heading) => {
      const at = A[heading] * 1000;
      const judged = (thousandth: number) => {
        const tieDowns = with4(flat(heading, LC(of(thousandth)), {}, LENGTHS[form]));
        return check({ mass, friction: 0 }, tieDowns);
      };
      expect(checkOf(judged(at), `${heading}/load`)).toMatchObject({ verdict: 'pass', utilization: 1 });
      expect(judged(at).verdict).toBe('pass');
      expect(verdictOf(judged(at - 0.01), heading)).toBe('fail');
      expect(judged(at - 0.01).verdict).toBe('fail');
      expect(verdictOf(judged(at + 0.01), heading)).toBe('pass');
    });
  }

  it('asks nothing upward while friction is not relied on', () => {
    const result = check({}, four);
    expect(result.verdict).toBe('pass');
    expect(checkOf(result, 'up/load').verdict).toBe('not-applicable');
    expect(codes(result.cautions)).toContain('LRG_NOT_LOOKED_AT');
  });

  it('counts the distance in the restrained direction over the length: 3-4-5 counts 0.8', () => {
    // 0.8 · 1000 kg = 800 kgf; 800 / 0.8 = 1000 kg
    const judged = (limit: Load) => verdictOf(check({ friction: 0 }, with4(sloped('forward', LC(limit)))), 'forward');
    expect([judged('1000 kg'), judged('999.99 kg'), judged('1000.01 kg')]).toEqual(['pass', 'fail', 'pass']);
  });

  it('takes off the deck what one that runs upward lifts, once friction is relied on', () => {
    // back 0.8, lift 0.6, μ 0.3: LC · (0.8 − 0.3 · 0.6) ≥ (0.8 − 0.3) · 1000 kg, LC ≥ 500 / 0.62 = 806.45 kg
    const m = (value: number) => ({ value, unit: 'm' }) as const;
    const judged = (limit: Load) =>
      verdictOf(
        check(
          { friction: 0.3 },
          with4({
            ...flat('forward', LC(limit)),
            attachment: [m(-4), m(0), m(1)],
            anchor: [m(-8), m(0), m(4)],
          } as TieDown),
        ),
        'forward',
      );
    expect([judged('806.4 kg'), judged('806.5 kg')]).toEqual(['fail', 'pass']);
  });

  it('never rounds AE to a row: 0.845 is neither 0.85 nor 0.7', () => {
    // 1.69 m · 1.69 m = 2.8561 m²; length 2 m: sqrt(4 − 2.8561) = 1.06953 m upward; AE = 1.69 / 2 = 0.845.
    // 800 kgf / 0.845 = 946.746 kg; by 0.85 it would be 941.18 kg
    const chain = (limit: Load): TieDown => ({
      ...flat('forward', LC(limit)),
      attachment: ['-5 m', '0 m', '1.0695326 m'],
      anchor: ['-6.69 m', '0 m', '0 m'],
    });
    const judged = (limit: Load) => verdictOf(check({ friction: 0 }, with4(chain(limit))), 'forward');
    expect([judged('942 kg'), judged('946.7 kg'), judged('946.8 kg')]).toEqual(['fail', 'fail', 'pass']);
  });

  it('counts two of four diagonal chains each way', () => {
    // corners at 3 m by 4 m on the plan, flat: 0.6 along, 0.8 across. Two of 500 kgf: 600 along, 800 across.
    const corner = (x: -1 | 1, y: -1 | 1): TieDown => ({
      id: `${x}${y}`,
      holds: 'load',
      path: 'vehicle-to-cargo',
      capacities: LC('500 kg'),
      attachment: [`${-10 + x} m`, `${y} m`, '1 m'],
      anchor: [`${-10 + 4 * x} m`, `${5 * y} m`, '1 m'],
    });
    const chains = ([-1, 1] as const).flatMap((x) => ([-1, 1] as const).map((y) => corner(x, y)));
    const result = check({ friction: 0 }, chains);
    const ratio = (heading: Heading) => (checkOf(result, `${heading}/load`) as { utilization: number }).utilization;
    expect(ratio('forward')).toBeCloseTo(800 / 600, 12);
    expect(ratio('rearward')).toBeCloseTo(500 / 600, 12);
    expect(ratio('left')).toBeCloseTo(500 / 800, 12);
    expect(ratio('right')).toBeCloseTo(500 / 800, 12);
    expect(result).toMatchObject({ verdict: 'fail', governing: 'forward/load' });
  });

  it('counts both runs of a loop', () => {
    // two flat runs to the left side, 250 kgf each: 500 kgf against 0.5 · 1000 to the right
    const loop = (limit: Load): TieDown => ({
      id: 'right',
      holds: 'load',
      path: 'over-same-side',
      capacities: LC(limit),
      attachment: ['-9 m', '1 m', '1 m'],
      anchor: ['-9 m', '4 m', '1 m'],
      otherAttachment: ['-11 m', '1 m', '1 m'],
      otherAnchor: ['-11 m', '4 m', '1 m'],
    });
    const judged = (limit: Load) => verdictOf(check({ friction: 0 }, with4(loop(limit))), 'right');
    expect([judged('250 kg'), judged('249.99 kg'), judged('250.01 kg')]).toEqual(['pass', 'fail', 'pass']);
  });

  it('leaves the forward force to what blocks it, and says so', () => {
    const result = check({ blockedForward: true, friction: 0 }, four.slice(1));
    expect(result.verdict).toBe('pass');
    expect(verdictOf(result, 'forward')).toBe('not-applicable');
    expect(codes(result.cautions)).toContain('BLOCKING_NOT_LOOKED_AT');
    expect(check({ friction: 0 }, four.slice(1)).verdict).toBe('fail');
    expect(codes(check({ friction: 0 }, four.slice(1)).assumptions)).toContain('TAKEN_AS_NOT_BLOCKED');
  });
});

describe('tie-downs over the load: P ≥ max(W · (a / μ − 1), 0.2 · W)', () => {
  // W = 1000, P = 2 · T · 1 of one upright tie-down
  const cases: [what: string, article: Partial<Article>, at: number, decides: readonly string[]][] = [
    // 1000 · (0.8/0.4 − 1) = 1000; T = 500
    ['forward', { friction: 0.4 }, 500, ['forward']],
    // 1000 · (0.5/0.4 − 1) = 250; T = 125
    ['blocked forward', { friction: 0.4, blockedForward: true }, 125, ['rearward', 'left', 'right']],
    // 1000 · (0.5/0.45 − 1) = 111 is less than 0.2 · 1000 = 200; T = 100
    ['the floor', { friction: 0.45, blockedForward: true }, 100, ['up']],
    // μ ≥ a: no more than the floor, never a negative number
    ['μ above a', { friction: 0.6, blockedForward: true }, 100, ['up']],
    ['μ above every a', { friction: 0.9 }, 100, ['up']],
  ];
  const forms: [form: keyof typeof LENGTHS, mass: QuantityInput<'mass'>, of: (thousandth: number) => Force][] = [
    ['inches', '1000 lb', (n) => `${n} lbf`],
    ['metric text', '1000 kg', (n) => `${n} kgf`],
    ['JSON', { value: 1, unit: 't' }, (n) => ({ value: n, unit: 'kgf' })],
  ];
  for (const [form, mass, of] of forms) {
    test.each(cases)(`${form}, %s: at, just below, just above`, (_what, article, at, decides) => {
      const judged = (thousandth: number) =>
        check({ mass, ...article }, [upright('strap', of(thousandth), {}, LENGTHS[form])]);
      expect(judged(at).verdict).toBe('pass');
      expect(judged(at + 0.01).verdict).toBe('pass');
      const below = judged(at - 0.01);
      expect(below.verdict).toBe('fail');
      const failed = below.checks.filter(({ verdict, weight }) => verdict === 'fail' && weight === 'requirement');
      expect(failed.map(({ id }) => id)).toEqual(decides.map((id) => `${id}/load`));
    });
  }

  it('counts sin α: 3-4-5 with the 3 upright counts 0.6', () => {
    // P = 2 · T · 0.6 = 1000; T = 833.33
    const sloping = {
      attachment: ['-10 m', '1 m', '3 m'],
      anchor: ['-10 m', '5 m', '0 m'],
      otherAttachment: ['-10 m', '-1 m', '3 m'],
      otherAnchor: ['-10 m', '-5 m', '0 m'],
    } as const;
    const judged = (pretension: Force) => check({ friction: 0.4 }, [upright('strap', pretension, sloping)]).verdict;
    expect([judged('833.3 kgf'), judged('833.4 kgf')]).toEqual(['fail', 'pass']);
  });

  it('counts pretension and never the lashing capacity', () => {
    // 100 kN is ten times what would do; 499 kgf of pretension is not enough
    expect(check({ friction: 0.4 }, [upright('strap', '499 kgf')]).verdict).toBe('fail');
    const result = check({ friction: 0.4 }, [upright('strap', '500 kgf')]);
    expect(result.tieDowns[0]).toMatchObject({ counts: 'pretension', credit: 1 });
    expect(result.tieDowns[0]?.rating?.value).toBeCloseTo(0.5 * 9.80665, 12); // kN
    expect(codes(result.assumptions)).toContain('AVERAGE_PRETENSION');
  });

  it('refuses a pretension beyond the lashing capacity, and one through a damaged part', () => {
    const of = (limit: Load) => check({ friction: 0.9 }, [upright('strap', '500 kgf', { capacities: LC(limit) })]);
    expect([of('500 kg').verdict, of('499.99 kg').verdict, of('500.01 kg').verdict]).toEqual(['pass', 'fail', 'pass']);
    expect(checkOf(of('499.99 kg'), 'pretension/strap').verdict).toBe('fail');
    const chain: Part = { id: 'chain', kind: 'chain', size: '8 mm', grade: 70, condition: 'damaged' };
    const damaged = check({ friction: 0.9 }, [upright('strap', '500 kgf', { capacities: undefined, parts: [chain] })]);
    expect(checkOf(damaged, 'pretension/strap').verdict).toBe('fail');
    expect(damaged.articles[0]?.count).toBe(0);
  });

  it('adds to direct ones', () => {
    // forward: 300 + 0.4 · (1000 + 250) = 800
    const judged = (pretension: Force) =>
      check({ friction: 0.4 }, with4(flat('forward', LC('300 kg')), upright('strap', pretension)));
    expect(judged('125 kgf').verdict).toBe('pass');
    expect(verdictOf(judged('124.99 kgf'), 'forward')).toBe('fail');
  });

  it('shows the clamp of both forms in the working', () => {
    const { steps } = check({ friction: 0.4 }, [upright('strap', '500 kgf')]);
    const clamp = (steps.find(({ symbol }) => symbol === 'P') as Step).result as QuantityLike;
    expect(clamp.unit).toBe('kN');
    expect(clamp.value).toBeCloseTo(9.80665, 12);
  });
});

describe('direct tie-downs with friction', () => {
  it('needs a fifth of the weight upward too', () => {
    // forward: 500 + 0.3 · 1000 = 800. Flat chains hold nothing down; 0.6 · 625 = 375 ≥ 200.
    const flatOne = check({ friction: 0.3 }, with4(flat('forward', LC('500 kg'))));
    expect(verdictOf(flatOne, 'forward')).toBe('pass');
    expect(flatOne).toMatchObject({ verdict: 'fail', governing: 'up/load' });
    const slopedOne = check({ friction: 0.3 }, with4(sloped('forward', LC('625 kg'))));
    expect(slopedOne.verdict).toBe('pass');
    expect(verdictOf(check({ friction: 0.3 }, with4(sloped('forward', LC('624.99 kg')))), 'forward')).toBe('fail');
  });

  it('holds upward at its threshold', () => {
    // forward by friction alone: μ = 0.8. Upward 0.6 · LC = 200: LC = 333.33 kg
    const judged = (limit: Load) => check({ friction: 0.8 }, with4(sloped('forward', LC(limit)))).verdict;
    expect([judged('333.3 kg'), judged('333.4 kg')]).toEqual(['fail', 'pass']);
    // by 3-4-5 of 1000 lb: 0.6 · 1000 = 600 = 0.2 · 3000, exactly
    const exact = (mass: QuantityInput<'mass'>) =>
      verdictOf(check({ mass, friction: 0.8 }, with4(sloped('forward', LC('1000 lb')))), 'up');
    expect([exact('3000 lb'), exact('3000.01 lb'), exact('2999.99 lb')]).toEqual(['pass', 'fail', 'pass']);
  });
});

describe('friction', () => {
  const strap = [upright('strap', '3000 kgf')];
  // P = 6000: μ · 7000 ≥ 800 needs μ ≥ 0.1143
  it('is found by surfaces, the low end of the range, from memory', () => {
    const result = check({ surfaces: { load: 'smooth-steel', deck: 'timber' } }, strap);
    expect(result.verdict).toBe('pass');
    expect(result.assumptions.find(({ code }) => code === 'FRICTION_FROM_TABLE')?.params.mu).toBe(0.3);
    expect(result.sources.find(({ clause }) => clause === 'typical friction coefficients')?.provenance).toBe('memory');
    // steel on steel: 0.1 · 7000 = 700 < 800, where the high end 0.2 would do
    expect(check({ surfaces: { load: 'smooth-steel', deck: 'smooth-steel' } }, strap).verdict).toBe('fail');
  });

  it('is a missing fact when it is not stated, not listed, or not dry', () => {
    const missing = (article: Partial<Article>) => missingIn(checkOf(check(article, strap), 'forward/load'));
    expect(missing({})).toEqual(['FRICTION_NOT_STATED']);
    expect(missing({ surfaces: { load: 'rubber', deck: 'ice' } })).toEqual(['FRICTION_FACTOR_NOT_LISTED']);
    expect(missing({ surfaces: { load: '__proto__', deck: 'constructor' } })).toEqual(['FRICTION_FACTOR_NOT_LISTED']);
    const wet = { load: 'smooth-steel', deck: 'timber', condition: 'wet' } as const;
    expect(missing({ surfaces: wet })).toEqual(['FRICTION_NOT_DRY']);
    expect(check({ surfaces: { ...wet, condition: 'dry' } }, strap).verdict).toBe('pass');
  });

  it('of a pair is the same whichever lies on top', () => {
    expect(check({ surfaces: { load: 'timber', deck: 'smooth-steel' } }, strap).verdict).toBe('pass');
  });

  it('refuses surfaces without names', () => {
    const spoiled = { load: 'timber', deck: Symbol('steel') } as unknown as { load: string; deck: string };
    expect(issueOf(() => check({ surfaces: spoiled }, strap))).toMatchObject({
      code: 'MISSING_FIELD',
      path: 'articles[0].surfaces.deck',
    });
    expect(issueOf(() => check({ friction: -0.1 }, strap))).toMatchObject({ code: 'NEGATIVE' });
    const required = () => tieDownsRequired({ rules: auLrg_2018, article: load({ friction: Number.NaN }) });
    expect(issueOf(required)).toMatchObject({ code: 'NOT_FINITE', path: 'article.friction' });
  });

  it('stated stands before the table, and the worst contact before both', () => {
    const surfaces = { load: 'smooth-steel', deck: 'timber' };
    expect(check({ surfaces, friction: 0.1 }, strap).verdict).toBe('fail');
    const contacts = [{ at: ['-9 m', '0 m', '0 m'] as const, friction: 0.1 }, { at: ['-11 m', '0 m', '0 m'] as const }];
    expect(check({ surfaces, friction: 0.3, contacts }, strap).verdict).toBe('fail');
    // one contact says nothing: the table, which does not undo the 0.1 of the other. 0.1 · 7000 = 700 < 800
    expect(check({ surfaces, contacts }, strap).verdict).toBe('fail');
    expect(check({ surfaces, contacts: contacts.slice(1) }, strap).verdict).toBe('pass'); // the table alone
  });

  it('is not asked for where strength is enough', () => {
    expect(check({}, four).verdict).toBe('pass');
  });
});

describe('a missing fact', () => {
  const bare = (id: Heading): TieDownAsWhole => ({
    id,
    holds: 'load',
    path: 'vehicle-to-cargo',
    capacities: LC('100 kN'),
  });
  it('of points leaves it open, unless the rest is enough or it cannot help', () => {
    const open = check({ friction: 0 }, with4(bare('forward')));
    expect(missingIn(checkOf(open, 'forward/load'))).toEqual(['POINTS_NOT_STATED']);
    expect(open.verdict).toBe('undetermined');
    expect(check({ friction: 0 }, [...four, { ...bare('forward'), id: 'extra' }]).verdict).toBe('pass');
    const weak: TieDown = { ...bare('forward'), capacities: LC('799 kg') }; // 799 < 800 whatever its angle
    expect(verdictOf(check({ friction: 0 }, with4(weak)), 'forward')).toBe('fail');
  });

  it('of pretension leaves it open', () => {
    const result = check({ friction: 0.4 }, [upright('strap', undefined)]);
    expect(result.verdict).toBe('undetermined');
    expect(missingIn(checkOf(result, 'forward/load'))).toEqual(['PRETENSION_NOT_STATED']);
    expect(result.tieDowns[0]).toMatchObject({ rating: null, counted: null });
  });

  it('of capacity: another system is refused', () => {
    for (const capacities of [
      { workingLoadLimit: '100 kN' },
      { maximumSecuringLoad: '100 kN' },
      { ratedStrength: '100 kN' },
    ] as const) {
      const result = check({ friction: 0 }, with4(flat('forward', capacities)));
      expect(missingIn(checkOf(result, 'forward/load'))).toEqual(['CAPACITY_NOT_STATED']);
    }
  });

  it('never breaks the upward rule while strength alone may be enough', () => {
    const result = check({}, with4(flat('forward', { workingLoadLimit: '100 kN' })));
    expect(result.verdict).toBe('undetermined');
    expect(verdictOf(result, 'up')).toBe('undetermined');
  });
});

describe('parts', () => {
  const anchors = (limit: Load): Part[] => [
    { id: 'ring', kind: 'anchor', at: 'vehicle', capacities: LC(limit) },
    { id: 'lug', kind: 'anchor', at: 'cargo', capacities: LC('100 kN') },
  ];
  const chained = (size: '8 mm' | '10 mm', others: readonly Part[]) =>
    ({
      ...flat('forward', {}),
      capacities: undefined,
      parts: [{ id: 'chain', kind: 'chain', size, grade: 70 }, ...others],
    }) as TieDown;
  const judged = (mass: QuantityInput<'mass'>, tieDown: TieDown) => check({ mass, friction: 0 }, with4(tieDown));

  it('10 mm chain counts 6 t of mass, not 60 kN', () => {
    // 0.8 · 7500 = 6000 kg. 0.8 · 7550 = 6040 kg = 59.23 kN, which 60 kN would hold
    const tenmm = chained('10 mm', anchors('100 kN'));
    expect(verdictOf(judged('7500 kg', tenmm), 'forward')).toBe('pass');
    expect(verdictOf(judged('7500.01 kg', tenmm), 'forward')).toBe('fail');
    expect(verdictOf(judged('7550 kg', tenmm), 'forward')).toBe('fail');
    const { steps, sources, cautions } = judged('7500 kg', tenmm);
    const crossing = steps.find(
      ({ subject, expression }) => subject === 'tie-down forward, chain' && expression === 'm · g',
    );
    expect(crossing?.result).toMatchObject({ value: 58.8399, unit: 'kN' }); // 6 · 9.80665
    expect(sources.some(({ clause, provenance }) => clause?.includes('AS/NZS 4344') && provenance === 'memory')).toBe(
      true,
    );
    expect(codes(cautions)).toContain('CHAIN_FROM_MEMORY');
  });

  it('counts the weakest: a point of 20 kN caps it', () => {
    // 20 kN / (0.8 · 9.80665) = 2549.3 kg
    const result = judged('2549 kg', chained('10 mm', anchors('20 kN')));
    expect(verdictOf(result, 'forward')).toBe('pass');
    expect(result.tieDowns.find(({ id }) => id === 'forward')?.weakest).toEqual(['ring']);
    expect(verdictOf(judged('2550 kg', chained('10 mm', anchors('20 kN'))), 'forward')).toBe('fail');
  });

  it('an anchor that is not listed is a missing fact', () => {
    expect(missingIn(checkOf(judged('1000 kg', chained('8 mm', [])), 'forward/load'))).toEqual([
      'ANCHOR_NOT_LISTED',
      'ANCHOR_NOT_LISTED',
    ]);
    // 0.8 · 5000 = 4000 kg is more than 3.8 t, whatever the anchors
    expect(verdictOf(judged('5000 kg', chained('8 mm', [])), 'forward')).toBe('fail');
  });

  it('a chain the table does not list is one too', () => {
    const imperial = {
      ...flat('forward', {}),
      capacities: undefined,
      parts: [{ id: 'chain', kind: 'chain', size: '5/16', grade: 70 }, ...anchors('1 t')],
    } as TieDown;
    expect(missingIn(checkOf(judged('1000 kg', imperial), 'forward/load'))).toEqual(['NOT_IN_TABLE']);
  });
});

describe('advice', () => {
  const of = (parts: readonly Part[], pretension: Force) =>
    check({ friction: 0.9 }, [upright('strap', pretension, { capacities: undefined, parts })]);
  const chain = (size: '8 mm' | '10 mm'): Part => ({ id: 'chain', kind: 'chain', size, grade: 70 });
  const webbing: Part = { id: 'strap', kind: 'webbing', width: '50 mm' };
  const ratchet: Part = { id: 'binder', kind: 'binder', style: 'ratchet' };
  test.each<[what: string, parts: readonly Part[], kgf: number]>([
    ['8 mm chain', [chain('8 mm')], 750],
    ['10 mm chain', [chain('10 mm'), ratchet], 750],
    ['8 mm chain with a ratchet (from memory)', [chain('8 mm'), ratchet], 1000],
    ['50 mm webbing', [webbing], 300],
  ])('least pretension of %s', (_what, parts, kgf) => {
    const judged = (force: number) => checkOf(of(parts, `${force} kgf`), 'practice/pretension/strap');
    expect(judged(kgf)).toMatchObject({ verdict: 'pass', weight: 'practice', utilization: 1 });
    expect(judged(kgf - 0.01).verdict).toBe('fail');
    expect(judged(kgf + 0.01).verdict).toBe('pass');
  });

  it('on plant decides nothing', () => {
    const result = check(
      { kind: 'machinery', accessories: [{ id: 'bucket', lowered: false, locked: false }, { id: 'boom' }] },
      four,
    );
    expect(result.verdict).toBe('pass');
    const words = (id: string) => checkOf(result, `practice/${id}`).verdict;
    expect(words('count/load')).toBe('pass');
    expect(words('pulling-forward/load')).toBe('fail'); // one of two
    expect(words('pulling-back/load')).toBe('fail');
    expect(words('no-webbing/load')).toBe('undetermined');
    expect(words('secured/bucket')).toBe('fail');
    expect(words('secured/boom')).toBe('undetermined');
    const strapped = { ...flat('forward', {}), capacities: undefined, parts: [webbing] } as TieDown;
    expect(checkOf(check({ kind: 'machinery' }, with4(strapped)), 'practice/no-webbing/load').verdict).toBe('fail');
  });

  it('names headings in which tie-downs share unequally, beyond 2:1', () => {
    const stiff = (id: string, axialStiffness: Force) => flat('forward', LC('100 kN'), { id, axialStiffness });
    const cautions = (other: Force) =>
      codes(check({ friction: 0 }, [...four, stiff('a', '1000 kN'), stiff('b', other)]).cautions);
    expect(cautions('2000 kN')).not.toContain('UNEQUAL_STIFFNESS');
    expect(cautions('2001 kN')).toContain('UNEQUAL_STIFFNESS');
  });
});

describe('the same plan', () => {
  const plan = {
    articles: [load({ friction: 0.3 })],
    tieDowns: [
      flat('forward', LC('9 kN')),
      flat('rearward', LC('5 kN')),
      sloped('left', LC('3 kN')),
      flat('right', LC('7 kN')),
    ],
  };
  const ratios = (result: SecurementCheck) =>
    Object.fromEntries(result.checks.map((each) => [each.id, 'utilization' in each ? each.utilization : each.verdict]));
  it('in a mirror swaps left and right', () => {
    const { 'left/load': left, 'right/load': right, ...rest } = ratios(checkSecurement({ rules: auLrg_2018, ...plan }));
    const swapped = ratios(checkSecurement({ rules: auLrg_2018, ...mirrored(plan) }));
    expect(left).not.toEqual(right);
    expect(swapped).toMatchObject({ ...rest, 'left/load': right, 'right/load': left });
  });

  it('through JSON, and without its working, is judged alike', () => {
    const whole = checkSecurement({ rules: auLrg_2018, ...plan });
    expect(ratios(checkSecurement({ rules: auLrg_2018, ...throughJson(plan) }))).toEqual(ratios(whole));
    const quick = checkSecurement({ rules: auLrg_2018, ...plan, working: false });
    expect(quick.checks).toEqual(whole.checks);
    expect([quick.steps, quick.sources, quick.assumptions]).toEqual([[], [], []]);
  });

  it('in pounds-force shows the same ratios', () => {
    const us = ratios(checkSecurement({ rules: auLrg_2018, ...plan, units: 'us' }));
    for (const [id, ratio] of Object.entries(ratios(checkSecurement({ rules: auLrg_2018, ...plan })))) {
      if (typeof ratio === 'number') expect(us[id]).toBeCloseTo(ratio, 12);
    }
  });

  it('a tie-down on an accessory holds nothing of the machine', () => {
    const article = load({ friction: 0, accessories: [{ id: 'bucket' }] });
    const onBucket = flat('forward', LC('100 kN'), { holds: 'bucket' });
    const result = checkSecurement({ rules: auLrg_2018, articles: [article], tieDowns: with4(onBucket) });
    expect(verdictOf(result, 'forward')).toBe('fail');
    expect(result.tieDowns.find(({ id }) => id === 'forward')).toMatchObject({ credit: 0, counted: { value: 0 } });
  });
});

describe('tieDownsRequired', () => {
  const newtons = (article: Partial<Article>) =>
    tieDownsRequired({ rules: auLrg_2018, article: load(article) }).perDirection.map(
      ({ direction, againstLashingCapacity }) => [
        direction,
        Math.round((againstLashingCapacity?.value ?? 0) * 1e6) / 1000, // shown in kN
      ],
    );
  it('states a · W each way; after friction, (a − μ) · W and upward', () => {
    // 1000 · 9.80665 · 0.8 and 0.5; 0.5, 0.2 and 0.2 after μ = 0.3
    expect(newtons({})).toEqual([
      ['forward', 7845.32],
      ['rearward', 4903.325],
      ['lateral', 4903.325],
    ]);
    expect(newtons({ friction: 0.3 })).toEqual([
      ['forward', 4903.325],
      ['rearward', 1961.33],
      ['lateral', 1961.33],
      ['up', 1961.33],
    ]);
    expect(newtons({ blockedForward: true, friction: 0.6 })).toEqual([
      ['rearward', 0],
      ['lateral', 0],
      ['up', 1961.33],
    ]);
  });

  it('has no aggregate; four for machines is advice', () => {
    const required = tieDownsRequired({ rules: auLrg_2018, article: load({ kind: 'machinery' }) });
    expect(required).toMatchObject({ minimumCount: 0, recommendedCount: 4, requiredAggregate: null, options: [] });
  });
});
