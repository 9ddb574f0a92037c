import { describe, expect, it } from 'vitest';
import { readLayout } from '../../src/securement/layout.js';
import type { Article, Plan, TieDown } from '../../src/securement/plan.js';
import { issueOf } from '../quantities/issue-of.js';
import { machine, rated } from './plans.js';

const plan = (article: Partial<Article> = {}, tieDown: Partial<TieDown> = {}): Plan => ({
  articles: [machine({ accessories: [{ id: 'loader' }], ...article })],
  tieDowns: [{ ...rated('chain', '4700 lb'), ...tieDown } as TieDown, rated('strap', '2000 lb', { holds: 'loader' })],
});

const layoutOf = (article: Partial<Article> = {}, tieDown: Partial<TieDown> = {}) =>
  readLayout(plan(article, tieDown))[0]!;

describe('readLayout', () => {
  it('reads points in meters and forces in newtons', () => {
    const { weight, centerOfGravity, contacts, tieDowns } = layoutOf(
      {
        mass: '1000 kg',
        centerOfGravity: ['-10 ft', '0 in', '1 yd'],
        contacts: [{ at: ['-8 ft', '25 in', '0 in'] }, { at: ['-12 ft', '25 in', '0 in'], friction: 0.1 }],
        friction: 0.4,
      },
      {
        anchor: ['-1 m', '3 m', '0 m'],
        attachment: ['-1 m', '0 m', '4 m'],
        pretension: '1 kN',
        axialStiffness: '5466 kN',
      },
    );
    expect(weight).toBe(9806.65); // 1000 kg at standard gravity
    expect(centerOfGravity?.[0]).toBeCloseTo(-3.048, 12); // 10 ft
    expect(centerOfGravity?.[2]).toBeCloseTo(0.9144, 12); // 1 yd
    expect(contacts.map(({ friction }) => friction)).toEqual([0.4, 0.1]);
    // 600 lbf over 1 in: 600 · 4.4482216152605 N / 0.0254 m = 105,076.1 N/m
    const gives = { by: '1 in', under: '600 lbf' } as const;
    const [tire] = layoutOf({ contacts: [{ at: ['-8 ft', '25 in', '0 in'], gives }] }).contacts;
    expect(tire?.stiffness).toBeCloseTo(105_076.1, 1);
    const [chain] = tieDowns;
    expect(chain).toMatchObject({ pretension: 1000, axialStiffness: 5_466_000 });
    // 3-4-5 triangle: from the cargo out and down
    expect(chain?.runs).toHaveLength(1);
    expect(chain?.runs[0]?.length).toBe(5);
    expect(chain?.runs[0]?.pull.map((part) => Number(part.toFixed(12)))).toEqual([0, 0.6, -0.8]);
  });

  it('leaves out what the plan leaves out, and gives the article the tie-downs of its accessories', () => {
    const layout = layoutOf();
    expect(layout).not.toHaveProperty('centerOfGravity');
    expect(layout.contacts).toEqual([]);
    expect(layout.tieDowns.map(({ tieDown, runs }) => [tieDown.id, runs.length])).toEqual([
      ['chain', 0],
      ['strap', 0],
    ]);
  });

  it.each([
    ['a point of two', { centerOfGravity: ['1 ft', '2 ft'] }, 'MISSING_FIELD', 'articles[0].centerOfGravity'],
    [
      'a mass in a point',
      { centerOfGravity: ['1 ft', '2 lb', '3 ft'] },
      'WRONG_KIND',
      'articles[0].centerOfGravity[1]',
    ],
    ['friction below zero', { friction: -0.1 }, 'NEGATIVE', 'articles[0].friction'],
    ['friction without end', { friction: Number.NaN }, 'NOT_FINITE', 'articles[0].friction'],
    ['friction above 2', { friction: 2.1 }, 'NOT_FINITE', 'articles[0].friction'],
    ['no contact', { contacts: [] }, 'EMPTY_LIST', 'articles[0].contacts'],
    ['a contact without place', { contacts: [{}] }, 'MISSING_FIELD', 'articles[0].contacts[0].at'],
    [
      'a contact that gives by nothing',
      { contacts: [{ at: ['1 ft', '2 ft', '0 ft'], gives: { by: '0 in', under: '600 lbf' } }] },
      'NOT_POSITIVE',
      'articles[0].contacts[0].gives.by',
    ],
    ['a contact that is none', { contacts: [null] }, 'MISSING_FIELD', 'articles[0].contacts[0]'],
  ])('refuses %s', (_, article, code, path) => {
    expect(issueOf(() => layoutOf(article as unknown as Partial<Article>))).toMatchObject({ code, path });
  });

  it.each([
    ['one end alone', { anchor: ['1 ft', '2 ft', '0 ft'] }, 'MISSING_FIELD', 'tieDowns[0].attachment'],
    ['pretension below zero', { pretension: '-1 kN' }, 'NOT_POSITIVE', 'tieDowns[0].pretension'],
    ['a stiffness that is a length', { axialStiffness: '1 ft' }, 'WRONG_KIND', 'tieDowns[0].axialStiffness'],
    [
      'the other end alone',
      { path: 'over-other-side', otherAnchor: ['1 ft', '2 ft', '0 ft'], otherAttachment: ['1 ft', '2 ft', '1 ft'] },
      'MISSING_FIELD',
      'tieDowns[0].anchor',
    ],
  ])('refuses %s', (_, tieDown, code, path) => {
    expect(issueOf(() => layoutOf({}, tieDown as unknown as Partial<TieDown>))).toMatchObject({ code, path });
  });

  it('finds a path that the points contradict', () => {
    const points = {
      anchor: ['-5 ft', '4 ft', '0 ft'],
      attachment: ['-5 ft', '3 ft', '3 ft'],
      otherAttachment: ['-6 ft', '3 ft', '3 ft'],
      otherAnchor: ['-6 ft', '4 ft', '0 ft'],
    } as const;
    expect(layoutOf({}, { path: 'over-same-side', ...points }).tieDowns[0]?.runs).toHaveLength(2);
    expect(issueOf(() => layoutOf({}, { path: 'over-other-side', ...points }))).toMatchObject({
      code: 'CONFLICTING_FIELDS',
      path: 'tieDowns[0].path',
    });
  });
});
