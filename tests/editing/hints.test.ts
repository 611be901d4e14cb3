import { describe, expect, test } from 'vitest';
import { hintsOf, type HintKind } from '../../language/src/editing/hints.js';
import { lensesOf } from '../../language/src/editing/lenses.js';
import { letsSaidAgain } from '../../language/src/editing/name-index.js';
import { countJobsFrom } from '../../language/src/editing/series-calls.js';
import * as ast from '../../language/src/syntax/generated/ast.js';
import { nameFiles, nameWorkspace } from './rename-workspace.js';

const { workspace, library, uris } = await nameWorkspace();
const document = (file: string): ReturnType<typeof workspace.shared.workspace.LangiumDocuments.getDocument> => workspace.shared.workspace.LangiumDocuments.getDocument(workspace.uri(`names/${file}.hotroom`));

/** The text with the hints of one kind put in, in ⟨ ⟩; only the lines that have some. */
function shown(file: string, kind: HintKind): readonly string[] {
    const its = document(file)!;
    const root = its.parseResult.value;
    const text = nameFiles[`names/${file}.hotroom`]!;
    const hints = hintsOf(workspace.analyze(its), undefined, ast.isFile(root) ? root : undefined).filter(hint => hint.kind === kind);
    const put = hints.toReversed().reduce((result, { at, label }) => `${result.slice(0, at)}⟨${label}⟩${result.slice(at)}`, text);
    return put.split('\n').filter(line => line.includes('⟨')).map(line => line.trim());
}

describe('hints', () => {
    test('what lets and calculated values come to, in the text of a job', () => {
        expect(shown('jobs', 'computedValues')).toEqual([
            'bench upper { top 35"; depth lower.depth + 5"⟨= 20"⟩ }',
            'bench lower { top max(step, upper.top / 2 - under)⟨= 18"⟩ }',
            'let under = upper.top - 36"⟨= 1"⟩',
        ]);
    });
    test('nothing in a series, which comes to something else for each job', () => { expect(shown('line', 'computedValues')).toEqual([]); });
    test('to which parameter a value is given by place, unless its name says so', () => {
        expect(shown('jobs', 'parameterNames')).toEqual(['job one "First" is cottage(⟨w:⟩96", side = left)', 'job three is high(⟨w:⟩84") {']);
        expect(shown('line', 'parameterNames')).toEqual(['depth     round_down(⟨value:⟩upper.depth - 4", ⟨step:⟩1")']);
    });
    test('volume and current stand behind the series where the series says the room', () => {
        const [one, two, three] = shown('jobs', 'volume');
        expect(one).toMatch(/^job one "First" is cottage\(96", side = left\)⟨inside volume [\d.]+ ft3, panels \d+⟩$/);
        expect([two, three].every(line => /⟨inside volume [\d.]+ ft3, panels \d+⟩ \{$/.test(line ?? ''))).toBe(true);
        expect(shown('jobs', 'amps')[0]).toMatch(/⟨stove: current 25 A, overcurrent device [^⟩]*⟩/);
    });
    test('what a job says otherwise has its hint in the job', () => {
        expect(shown('jobs', 'cutLength').map(line => line.split(' ⟨')[0])).toEqual([expect.stringMatching(/^bench upper⟨/), expect.stringMatching(/^bench upper⟨/), expect.stringMatching(/^bench lower⟨/), expect.stringMatching(/^bench lower⟨/)]);
    });
});

describe('lines above', () => {
    const lines = (file: string): readonly string[] => {
        const its = document(file)!;
        const root = its.parseResult.value;
        const countJobs = (start: number): number => { const series = ast.isFile(root) ? root.items.find(item => item.$cstNode?.offset === start) : undefined; return series ? countJobsFrom(series, uris, library) : 0; };
        return lensesOf(workspace.analyze(its), { countJobs, letsSaidAgain: (start, end) => letsSaidAgain(its.uri.toString(), start, end, library) }).map(({ at, title }) => `${nameFiles[`names/${file}.hotroom`]!.slice(at.start, at.end)}: ${title}`);
    };
    test('a series tells how many jobs are made from it, through other series too', () => {
        expect(lines('line').filter(line => line.startsWith('series'))).toEqual(['series cottage: 3 jobs are made from it', 'series high: 1 job is made from it']);
    });
    test('a job tells what it says otherwise', () => {
        expect(lines('jobs').filter(line => /otherwise/.test(line))).toEqual([
            'job one: cottage, with nothing said otherwise',
            'job two: otherwise than cottage: step and upper.top',
            'variant low: otherwise than its job: step, upper.top, upper.depth, lower.depth and 1 more',
            'job three: otherwise than high: lower.top and stove_feed.cellar.length',
        ]);
    });
    test('a house rule tells how many keep it', async () => {
        const small = await nameWorkspace({
            'a.hotroom': ['rule deep { each bench; require bench.depth >= 18"; because "house" }', 'rule high { each bench; when bench.top > 30"; require bench.depth >= 18"; because "house" }', 'rule two { require count(bench) = 2; because "house" }',
                'rule none { each heater; require heater.power > 1 kW; because "house" }', 'job a { bench upper on back { top 37"; depth 20" } bench lower on back { top 18"; depth 16" } }'.replace('} bench', '}\nbench')].join('\n'),
        });
        const its = small.workspace.shared.workspace.LangiumDocuments.getDocument(small.workspace.uri('a.hotroom'))!;
        expect(lensesOf(small.workspace.analyze(its)).map(({ title }) => title).slice(1)).toEqual(['holds for 1 of 2 benches in this file’s jobs', 'holds for 1 of 1 bench in this file’s jobs', 'holds for 1 of 1 job of this file']);
    });
});
