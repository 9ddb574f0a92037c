import { describe, expect, it } from 'vitest';
import { checkSecurement, inWords, us49cfr393_2024 } from '../../src/index.js';
import { english } from '../../src/words/en.js';
import { RESULTS } from './results.js';

const notesIn = (value: unknown): { code: string; text: string }[] => {
  if (typeof value !== 'object' || value === null) return [];
  const { code, text } = value as Record<string, unknown>;
  if (typeof code === 'string' && typeof text === 'string') return [{ code, text }];
  return Object.values(value).flatMap(notesIn);
};

describe('inWords', () => {
  it('says every note of a result, wherever it stands, and leaves no place open', () => {
    for (const [name, result] of Object.entries(RESULTS)) {
      const notes = notesIn(inWords(result));
      expect(notes.length, name).toBeGreaterThan(0);
      for (const { code, text } of notes) {
        const sentence = english.notes[code as keyof typeof english.notes];
        expect(text).not.toMatch(/\{\w+\}/);
        expect(text).toContain(sentence.split(/\{\w+\}/)[0]);
      }
    }
  });

  it('changes nothing but the texts, and not the result that it was given', () => {
    const withoutTexts = (value: unknown) =>
      JSON.parse(JSON.stringify(value, (key, item) => (key === 'text' && typeof item === 'string' ? '' : item)));
    for (const result of Object.values(RESULTS)) {
      const before = JSON.stringify(result);
      const said = inWords(result);
      expect(withoutTexts(said)).toEqual(withoutTexts(result));
      expect(JSON.stringify(result)).toBe(before);
      expect(Object.getPrototypeOf(said)).toBe(Object.getPrototypeOf(result));
    }
  });

  it('takes a part of a result, and one that went through JSON', () => {
    const result = RESULTS['a plan that is undetermined']!;
    expect(inWords(JSON.parse(JSON.stringify(result)))).toEqual(JSON.parse(JSON.stringify(inWords(result))));
    expect(inWords(result.cautions)).toEqual(inWords(result).cautions);
    expect(inWords(null)).toBe(null);
    expect(inWords('text')).toBe('text');
  });

  it('says another language', () => {
    const words = { ...english, notes: { ...english.notes, STAND_CLEAR: 'Abstand halten.' } };
    const { cautions } = checkSecurement({ rules: us49cfr393_2024, ...PLAN });
    expect(inWords(cautions, words).find(({ code }) => code === 'STAND_CLEAR')?.text).toBe('Abstand halten.');
  });

  it('names the tie-down where the sentence itself does not', () => {
    const { checks } = checkSecurement({ rules: us49cfr393_2024, ...PLAN });
    const missing = inWords(checks).flatMap((check) => ('missing' in check ? check.missing : []));
    expect(missing.map(({ text }) => text)).toContain('Tie-down only: The working load limit marked on binder b.');
  });

  it('leaves alone what only looks like a note, and never touches a prototype', () => {
    const odd = JSON.parse(
      '{"code":"UNMARKED_CHAIN","params":{"grade":{},"clause":"x"},"text":"x","__proto__":{"code":"MET","params":{},"text":""}}',
    );
    expect(inWords(odd).text).toBe('x');
    const own = JSON.parse('{"__proto__":{"code":"MET","params":{},"text":""}}');
    const said = inWords(own);
    expect(Object.getPrototypeOf(said)).toBe(Object.prototype);
    expect(Object.getOwnPropertyDescriptor(said, '__proto__')?.value.text).toBe('Met.');
  });

  it('goes through what stands in many places once', () => {
    let shared: unknown = { code: 'MET', params: {}, text: '' };
    for (let level = 0; level < 30; level++) shared = [shared, shared];
    let said: unknown = inWords(shared);
    while (Array.isArray(said)) [said] = said;
    expect(said).toMatchObject({ code: 'MET', text: 'Met.' });
  });

  it('leaves a note of an unknown code, and places that the caller wrote', () => {
    const unknown = { code: 'NOT_OURS', params: {}, text: 'as it is' };
    expect(inWords([unknown])).toEqual([unknown]);
    const note = { code: 'STATED_AS_WHOLE', params: { tieDown: '{limit}', limit: '{tieDown}' }, text: '' };
    const [said] = inWords([note]);
    expect(said?.text).toContain('{limit}');
    expect(said?.text).toContain('{tieDown}');
  });
});

const PLAN = {
  articles: [{ id: 'tractor', kind: 'machinery', mass: '3000 lb', length: '9 ft' }],
  tieDowns: [
    {
      id: 'only',
      holds: 'tractor',
      path: 'vehicle-to-cargo',
      parts: [
        { id: 'c', kind: 'chain', size: '5/16', grade: 70 },
        { id: 'b', kind: 'binder' },
        { id: 'a', kind: 'anchor', at: 'vehicle', markedWll: '5000 lb' },
        { id: 'm', kind: 'anchor', at: 'cargo', markedWll: '5000 lb' },
      ],
    },
  ],
} as const;
