import { describe, expect, test } from 'vitest';
import { reviewExport, reviewJsonSchema, type ReviewExport } from '../../language/src/review/review-json.js';
import { reviewHtml, reviewMarkup } from '../../language/src/review/review-html.js';
import { reviewReport, type ReviewReport } from '../../language/src/review/review-report.js';
import { allRules } from '../../language/src/rules/index.js';
import { birchPoint, Folder } from '../server/cli/command-line.js';
import { ScratchRepository } from '../server/cli/scratch-repository.js';
import { withStandardJob } from '../support/standard-job.js';
import { analyzeText, exampleText } from '../support/workspace.js';

const today = { year: 2026, month: 11, day: 25 };
async function reportOf(text: string, index = 0): Promise<ReviewReport> {
    const analysis = await analyzeText(text, { today });
    return reviewReport(analysis.jobs[index]!, { file: 'job.hotroom', showPlace: ({ uri, start }) => `${uri.split('/').at(-1)!}:${start}`, today });
}
const reviewed = async (folder: Folder, ...words: readonly string[]): Promise<ReviewExport['reports'][number]> => {
    const { out, code } = await folder.run(['review', ...words, '--format', 'json', '--fail-on', 'never']);
    expect(code).toBe(0);
    return (JSON.parse(out) as ReviewExport).reports[0]!;
};

describe('what a reviewer looks at', () => {
    test('findings come gravest first, each with measured, required and whose requirement', async () => {
        const { findings, counts } = await reportOf(withStandardJob('heater stove on right { model Tarn60; from front 1"; guard yes; backing 1 1/2" }\nsensor on right { centre from front 16"; below_ceiling 9"; cable 9\' }'));
        expect(findings.map(({ severity }) => severity)).toEqual([...findings.map(({ severity }) => severity)].sort((a, b) => ['error', 'warning', 'info', 'hint'].indexOf(a) - ['error', 'warning', 'info', 'hint'].indexOf(b)));
        expect(findings.find(({ rule }) => rule === 'clearance-beside-too-small')).toMatchObject({ measured: '1" (≈25.5 mm)', required: '4" (≈101.5 mm)', source: 'Tarn 60 installation sheet, demo edition 2', title: allRules.find(({ id }) => id === 'clearance-beside-too-small')!.title });
        expect(findings.find(({ rule }) => rule === 'sensor-too-low')).toMatchObject({ source: 'IRC 2018, M1902.4' });
        expect(counts.error).toBeGreaterThanOrEqual(2);
    });
    test('every computed fact of the job stands among its figures once, whichever engine made it', async () => {
        const { jobs: [job] } = await analyzeText(exampleText('birch-point.hotroom'));
        const { figures } = await reportOf(exampleText('birch-point.hotroom'));
        const paths = figures.flatMap(group => group.figures.map(({ path }) => path));
        expect(new Set(paths).size).toBe(paths.length);
        expect(job!.facts.under().map(({ path }) => path).filter(path => !paths.includes(path))).toEqual([]);
        expect(figures.map(({ title }) => title)).toEqual(expect.arrayContaining(['The site', 'The room', 'Door entry', 'Bench upper', 'Heater stove', 'Circuit stove_feed', 'Air', 'Counts']));
    });
    test('figures to sign say their formula, their lines and their source', async () => {
        const { figures, glance } = await reportOf(exampleText('birch-point.hotroom'));
        const figure = (path: string) => figures.flatMap(group => group.figures).find(one => one.path === path);
        expect(figure('room.inside.volume')).toMatchObject({ value: '255.8 ft3 (7.24 m3)', how: '76 1/2" x 72" x 80 1/4"', isToSign: true });
        expect(figure('upper.top')).toMatchObject({ value: '37" (≈940 mm)', how: 'as written', isToSign: true });
        expect(figure('stove.device')).toMatchObject({ isToSign: true });
        expect(figure('stove.device')!.how).not.toBe('');
        expect(figure('room.inside.width')!.from.length).toBeGreaterThan(1);
        expect(figure('room.wall_thickness')!.isToSign).toBe(false);
        expect(glance.map(({ title }) => title)).toEqual(expect.arrayContaining(['Outside, width x depth x height', 'Inside volume', 'Stove, rated power', 'Stove, overcurrent device', 'Upper, finished top']));
    });
    test('waivers say what they accept, and those that are over or accept nothing say that', async () => {
        const waive = (rule: string, until: string): string => `waive ${rule} on stove because "short people" by "office" until ${until}`;
        const { waivers, findings } = await reportOf(withStandardJob([waive('feet-below-stones', '2027-03-01'), waive('feet-below-stones', '2026-01-31'), waive('room-volume-above-range', '2027-03-01')].join('\n')));
        expect(waivers.map(({ standing }) => standing)).toEqual(['in force', 'over', 'accepts nothing']);
        expect(waivers[0]!.accepts[0]).toContain('Feet on bench upper');
        expect(findings.map(({ rule }) => rule)).not.toContain('feet-below-stones');
    });
    test('what was not checked, and figures from memory, are told', async () => {
        const report = await reportOf(withStandardJob('rules us_dwelling'));
        expect(report.notChecked.bySet[0]!.items.join()).toContain('egress');
        expect(report.notChecked.notRun[0]).toContain('IEC 60364');
        expect(report.sources.cited.some(({ isFromMemory }) => isFromMemory)).toBe(true);
        expect(report.sources.ruleSets[0]!.documents.map(({ title, edition }) => `${title} ${edition}`)).toContain('International Residential Code 2018');
        expect(report.cautions.join(' ')).toMatch(/no approval of any kind/);
    });
    test('settings that turned a rule off are told with what they left out', async () => {
        const folder = birchPoint();
        folder.write('hotroom.json', '{ "severities": { "feet-below-stones": "off", "door-clear-width-too-small": "warning" } }');
        const { notChecked, findings } = await reviewed(folder, 'birch-point.hotroom');
        expect(notChecked.notRun).toContain('Turned off by the settings of the project: feet-below-stones, with 1 finding left out.');
        expect(findings).toMatchObject([{ rule: 'door-clear-width-too-small', severity: 'warning', usualSeverity: 'info' }]);
    });
    test('sign-offs: as it was signed, changed since, of another revision', async () => {
        const sign = (revision: string, fingerprint: string): string => `sign_off { revision "${revision}"; by "N. Aune"; date 2026-11-30; fingerprint "${fingerprint}" }`;
        const { fingerprint } = await reportOf(withStandardJob('revision "B"'));
        const { signOffs } = await reportOf(withStandardJob(`revision "B"\n${sign('A', fingerprint!)}\n${sign('B', fingerprint!)}\n${sign('B', '0'.repeat(32))}`));
        expect(signOffs.map(({ standing }) => standing)).toEqual(['another revision', 'matches', 'changed since']);
    });
    test('half a job has a report too, without a fingerprint', async () => {
        const report = await reportOf('job one { revision "A"\n    room { width\n    }\n}');
        expect(report.fingerprint).toBeUndefined();
        expect(reviewHtml([report])).toContain('none: part of the job cannot be read');
    });
});

describe('the page', () => {
    test('is whole, loads nothing, and never says approved', async () => {
        const html = reviewHtml([await reportOf(exampleText('birch-point.hotroom'))]);
        expect(html).toMatch(/^<!DOCTYPE html>\n<html lang="en">/);
        expect(html).toContain('default-src &#39;none&#39;'.replaceAll('&#39;', '\''));
        expect(html).not.toMatch(/<script|<link|src=|href=|https?:/);
        expect(html.replaceAll(/<[^>]+>/g, ' ')).not.toMatch(/\b(is|was|are) approved\b/i);
        for (const id of ['glance', 'findings', 'waivers', 'figures', 'not-checked', 'sources', 'cautions', 'sign-off']) expect(html).toContain(`<section id="${id}">`);
        for (const tag of ['section', 'article', 'table', 'tr', 'td', 'dl', 'div', 'span', 'p', 'ul', 'li']) expect([...html.matchAll(new RegExp(`<${tag}[ >]`, 'g'))].length, tag).toBe([...html.matchAll(new RegExp(`</${tag}>`, 'g'))].length);
    });
    test('no name, reason or file of a job becomes markup or turns the writing', async () => {
        const hostile = '<img src=x onerror=alert(1)>&\u202e\'';
        const analysis = await analyzeText(withStandardJob(`number "${hostile}"\nrevision "${hostile}"\ndrawn_by "${hostile}"\nwaive feet-below-stones on stove because "${hostile}" by "${hostile}" until 2027-03-01\nsign_off { revision "${hostile}"; by "${hostile}"; date 2026-11-30; fingerprint "${hostile}" }`), { today });
        const html = reviewHtml([reviewReport(analysis.jobs[0]!, { file: hostile, showPlace: () => hostile, today })]);
        expect(html).toContain('&lt;img src=x onerror=alert(1)&gt;&amp;\\u{202e}&#39;');
        expect(html).not.toMatch(/<img|\u202e/);
    });
    test('its numbered places lead to the text', async () => {
        const { body, places } = reviewMarkup(await reportOf(exampleText('birch-point.hotroom')));
        expect([...body.matchAll(/data-place="(\d+)"/g)].map(([, index]) => Number(index))).toEqual(places.map((_, i) => i));
        expect(places.length).toBeGreaterThan(20);
    });
});

describe('the command', () => {
    test.each([['text', 'Birch Point bathhouse: review\n===='], ['markdown', '# Birch Point bathhouse: review\n'], ['html', '<!DOCTYPE html>'], ['json', '{\n  "format": "hotroom-review",\n  "version": 1,']])('as %s', async (format, start) => {
        const { code, out, err } = await birchPoint().run(['review', 'birch-point.hotroom', '--format', format]);
        expect([code, err, out.slice(0, start.length)]).toEqual([0, '', start]);
    });
    test('JSON is what its schema says, places as words', async () => {
        const report = await reportOf(exampleText('birch-point.hotroom'));
        expect(reviewExport([report]).reports[0]!.findings[0]!.place).toBe(report.findings[0]!.place.text);
        expect(JSON.stringify(reviewJsonSchema())).toContain('draft/2020-12');
    });
    test('errors make the exit code 1; a report is written whole to a file, never over a job', async () => {
        const folder = birchPoint();
        folder.write('near.hotroom', folder.read('birch-point.hotroom').replace('front 8"', 'front 1"'));
        expect((await folder.run(['review', 'near.hotroom', '--format', 'html', '--out', 'review.html'])).code).toBe(1);
        expect(folder.read('review.html')).toMatch(/<\/html>\n$/);
        expect(await folder.run(['review', 'near.hotroom', '--out', 'birch-point.hotroom'])).toMatchObject({ code: 2, err: expect.stringContaining('the report would take its place') as string });
        expect(await folder.run(['review'])).toMatchObject({ code: 2 });
        expect(await folder.run(['review', 'near.hotroom', '--job', 'birch_pont'])).toMatchObject({ code: 2, err: 'hotroom: There is no job called birch_pont. Is birch_point meant?\n' });
    });
    test('the fingerprint it prints is the one a sign-off wants', async () => {
        const folder = birchPoint();
        const { out, code } = await folder.run(['review', 'birch-point.hotroom', '--fingerprint']);
        expect([code, out]).toEqual([0, expect.stringMatching(/^[0-9a-f]{32} {2}birch_point\n$/)]);
        const sign = `    sign_off { revision "B"; by "N. Aune"; date 2026-11-30; fingerprint "${out.slice(0, 32)}" }\n}\n`;
        folder.write('signed.hotroom', folder.read('birch-point.hotroom').replace(/\}\n$/, sign));
        expect((await folder.run(['check', 'signed.hotroom'])).code).toBe(0);
        folder.write('signed.hotroom', folder.read('signed.hotroom').replace('top       37"', 'top       37 1/16"'));
        expect((await folder.run(['check', 'signed.hotroom'])).out).toContain('error signed-revision-changed');
        folder.write('broken.hotroom', 'job one { revision "A"\n    room { width\n    }\n}\n');
        expect(await folder.run(['review', 'broken.hotroom', '--fingerprint'])).toMatchObject({ code: 3, out: '' });
    });
    test('--since: what was written otherwise stands first, new findings are marked and told once', async () => {
        const folder = new ScratchRepository();
        folder.change('jobs/birch.hotroom', 'front 8"', 'front 1"');
        const { findings, changes } = await reviewed(folder, 'jobs/birch.hotroom', '--since', 'HEAD');
        expect(findings.filter(({ isNew }) => isNew).map(({ rule }) => rule)).toContain('clearance-beside-too-small');
        expect(findings.filter(({ isNew }) => !isNew).map(({ rule }) => rule)).toContain('feet-below-stones');
        expect(changes!.groups[0]).toEqual({ title: 'Written otherwise', rows: [{ what: 'stove.from.distance', how: 'moved', detail: '8" → 1"', place: 'birch.hotroom:54' }] });
        expect(changes!.groups.flatMap(({ rows }) => rows.map(({ what }) => what)).filter(what => what.startsWith('finding'))).toEqual([]);
        expect((await reviewed(folder, 'jobs/birch.hotroom', '--since', 'jobs/birch.hotroom')).changes).toEqual({ since: 'jobs/birch.hotroom', isNewJob: false, groups: [] });
    });
    test('hostile names of revisions and files are refused, not run', async () => {
        const folder = new ScratchRepository();
        for (const name of ['--upload-pack=touch x', '$(touch x)', '-x', 'a\nb', '../../etc']) expect((await folder.run(['review', 'jobs/birch.hotroom', `--since=${name}`])).code, name).toBeGreaterThanOrEqual(2);
        expect(folder.git('status', '--porcelain')).toBe('');
    });
});
