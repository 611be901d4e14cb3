/** The pages by themselves, fed with what an extension could send: data that looks like markup, stale lists, odd tables. */
import assert from 'node:assert/strict';
import fs from 'node:fs';
import path from 'node:path';
import { launchBrowser } from './browser.mjs';
import { root } from './paths.mjs';

const subject = { uri: 'file:///job.hotroom' };
const at = line => ({ uri: subject.uri, range: { start: { line, character: 0 }, end: { line, character: 5 } } });
const row = (mark, count, line) => ({ cells: [{ text: mark }, count === undefined ? { text: 'site cut' } : { text: String(count), sort: count }], ...(line === undefined ? {} : { at: at(line) }) });
const columns = [{ id: 'mark', label: 'Mark', align: 'start' }, { id: 'count', label: 'Count', align: 'end' }];
const list = {
    title: '<img src=x onerror="document.title=\'broken in\'">',
    subtitle: '<b>bold</b>',
    revision: 'B',
    tables: [
        { id: 'cuts', caption: 'Cut list', columns, rows: [row('FRONT-2', 10, 3), row('FRONT-10', 9, 4), row('<script>', undefined, 5), row('BACK-1', 100)], footer: ['Total', '119'] },
        { id: 'empty', caption: 'Nothing here', columns, rows: [] },
        { id: 'stock', caption: 'Stock plan', columns, rows: [row('cedar 1x4', 7, 9)], footer: ['Proven least cost.'] },
    ],
    notes: ['<i>note</i>'],
    cautions: ['The heater\'s own manual, the local code and licensed trades decide.'],
    csv: [{ fileName: 'cuts.csv', text: '' }],
};

const sides = [{ id: 'what', label: 'What', align: 'start' }, { id: 'how', label: 'How', align: 'start' }, { id: 'before', label: 'Before', align: 'start', side: 'before' }, { id: 'now', label: 'Now', align: 'start', side: 'now' }];
const old = line => ({ ...at(line), uri: 'hotroom-revision:/b.hotroom' });
const change = (what, how, [before, was], [now, is]) => ({
    cells: [{ text: what }, { text: how }, { text: before, ...(was && { place: `b.hotroom:${was}` }) }, { text: now, ...(is && { place: `b.hotroom:${is}` }) }],
    ...(was && { before: old(was) }), ...(is && { at: at(is) }),
});
const comparison = {
    title: '<img src=x>: what changed', subtitle: 'the last commit → <b>b</b>', notes: [], cautions: list.cautions, csv: [], markdown: '# b',
    tables: [
        { id: 'cut', caption: 'Cut again', columns: sides, rows: [change('part <script>', 'resized', ['length 33 1/4"', 3], ['length 34 1/4"', 4]), change('panel BACK-1', 'gone', ['module', 9], ['', undefined])] },
        { id: 'drawing', caption: 'Drawing only', columns: sides, rows: [change('upper.top', 'changed', ['37"', 12], ['38"', 12])] },
    ],
};

/** Adds the steps. They need `dist/page`. */
export async function pageSteps(steps) {
    const browser = await launchBrowser();
    try {
        const page = await browser.newPage({ viewport: { width: 520, height: 700 } });
        page.setDefaultTimeout(10_000);
        const troubles = [];
        page.on('pageerror', error => troubles.push(String(error)));
        const file = name => fs.readFileSync(path.join(root, 'dist/page', name), 'utf8');
        const open = async (kept = {}, name = 'cut-list') => {
            await page.goto('about:blank');
            await page.setContent(`<!DOCTYPE html><html lang="en"><head><title>Cut list</title><style>${file(`${name}.css`)}</style></head><body><main id="page"></main></body></html>`);
            await page.evaluate(state => {
                Object.assign(globalThis, { sent: [], state, acquireVsCodeApi: () => ({ postMessage: m => globalThis.sent.push(m), getState: () => globalThis.state, setState: s => { globalThis.state = s; } }) });
            }, kept);
            await page.addScriptTag({ content: file(`${name}.js`) });
        };
        const tell = message => page.evaluate(data => window.postMessage(data, '*'), message);
        const sent = () => page.evaluate(() => globalThis.sent.splice(0));
        const marks = table => page.locator('section.sheet').nth(table).locator('tbody tr:not([hidden]) th').allInnerTexts();
        const show = async (number = 1, document = list, of = subject) => {
            await tell({ type: 'picture', number, document, subject: of });
            await tell({ type: 'condition', condition: 'fresh', message: '' });
            await page.locator('body[data-condition="fresh"]').waitFor();
        };

        await steps.step('page: asks for its list and says it is coming', async () => {
            await open();
            assert.deepEqual(await sent(), [{ type: 'ready' }]);
            await page.locator('.banner [role=status]', { hasText: 'Working out' }).waitFor();
            await page.getByRole('button', { name: 'Cancel' }).click();
            assert.deepEqual(await sent(), [{ type: 'cancel' }]);
        });
        await steps.step('page: what a job says never becomes markup', async () => {
            await show();
            assert.equal(await page.locator('h1').innerText(), list.title);
            assert.equal(await page.locator('main img, main script, main b, main i').count(), 0);
            assert.equal(await page.title(), 'Cut list');
        });
        await steps.step('page: figures sort as figures, both ways and back', async () => {
            const count = page.getByRole('columnheader', { name: 'Count' }).first();
            const press = async () => { await count.getByRole('button').click(); return [await count.getAttribute('aria-sort'), await marks(0)]; };
            assert.deepEqual(await press(), ['ascending', ['FRONT-10', 'FRONT-2', 'BACK-1', '<script>']]);
            assert.deepEqual(await press(), ['descending', ['BACK-1', 'FRONT-2', 'FRONT-10', '<script>']]);
            assert.deepEqual(await press(), ['none', ['FRONT-2', 'FRONT-10', '<script>', 'BACK-1']]);
        });
        await steps.step('page: one row of a table is in the Tab order, arrows walk on into the next table, Enter names the row', async () => {
            assert.deepEqual(await page.locator('section.sheet').evaluateAll(all => all.map(sheet => sheet.querySelectorAll('tr[tabindex="0"]').length)), [1, 0, 1]);
            await page.locator('#filter').focus();
            await page.keyboard.press('ArrowDown');
            await page.keyboard.press('End');
            await page.keyboard.press('Enter');
            assert.deepEqual(await sent(), [], 'a row without a source leads nowhere');
            await page.keyboard.press('ArrowDown');
            await page.keyboard.press('Enter');
            await page.keyboard.press('ArrowUp');
            await page.keyboard.press('Home');
            await page.keyboard.press('Enter');
            assert.deepEqual(await sent(), [
                { type: 'goTo', picture: 1, table: 'stock', row: 0, side: 'now', moveFocus: true },
                { type: 'goTo', picture: 1, table: 'cuts', row: 0, side: 'now', moveFocus: true },
            ]);
        });
        await steps.step('page: a new list keeps the row that holds the keyboard, by its mark', async () => {
            await page.keyboard.press('ArrowDown');
            const turned = { ...list, tables: [{ ...list.tables[0], rows: [...list.tables[0].rows].reverse() }] };
            await show(2, turned);
            assert.equal(await page.evaluate(() => document.activeElement.querySelector('th')?.textContent), 'FRONT-10');
        });
        await steps.step('page: a click shows the source and leaves the keyboard where it is', async () => {
            await sent();
            await page.locator('tbody tr', { hasText: 'FRONT-2' }).click();
            assert.deepEqual(await sent(), [{ type: 'goTo', picture: 2, table: 'cuts', row: 3, side: 'now', moveFocus: false }]);
        });
        await steps.step('page: a filter without a match says so and is kept', async () => {
            await page.locator('#filter').fill('nothing like it');
            await page.locator('.nothing', { hasText: 'No row matches' }).waitFor();
            await page.locator('caption', { hasText: '0 of 4 rows' }).waitFor();
            const kept = await page.evaluate(() => globalThis.state);
            assert.deepEqual([kept.filter, kept.uri], ['nothing like it', subject.uri]);
            await open({ ...kept, filter: 'front' });
            await show();
            assert.deepEqual(await marks(0), ['FRONT-2', 'FRONT-10']);
        });
        await steps.step('page: a broken file leaves the last list, marked', async () => {
            await tell({ type: 'condition', condition: 'stale', message: 'The file has errors.' });
            await page.locator('body[data-condition="stale"] .banner', { hasText: 'The file has errors.' }).waitFor();
            assert.deepEqual(await marks(0), ['FRONT-2', 'FRONT-10']);
        });
        await steps.step('page: a failure without a list offers the log', async () => {
            await open();
            await tell({ type: 'condition', condition: 'failed', message: 'No job.' });
            await page.locator('.banner', { hasText: 'No job.' }).waitFor();
            await sent();
            await page.getByRole('button', { name: 'Show Log' }).click();
            assert.deepEqual(await sent(), [{ type: 'showLog' }]);
            assert.equal(await page.getByRole('button', { name: 'Save CSV' }).isDisabled(), true);
        });
        const compared = { ...subject, job: 'a', with: { kind: 'last-commit' } };
        await steps.step('page: a comparison leads to both sides, by key and by mouse', async () => {
            await open({}, 'comparison');
            await sent();
            await show(1, comparison, compared);
            const { uri, job, with: other } = await page.evaluate(() => globalThis.state);
            assert.deepEqual({ uri, job, with: other }, compared);
            assert.deepEqual(await page.locator('nav.contents button').allInnerTexts(), ['Cut again (2)', 'Drawing only (1)']);
            await page.getByRole('button', { name: 'Cut again (2)' }).click();
            await page.keyboard.press('Enter');
            await page.keyboard.press('Shift+Enter');
            await page.keyboard.press('ArrowRight'); // the place before
            await page.keyboard.press('Enter');
            await page.keyboard.press('ArrowRight'); // the place now
            await page.keyboard.press('ArrowRight'); // no further
            await page.keyboard.press('Enter');
            await page.keyboard.press('ArrowLeft');
            await page.keyboard.press('ArrowLeft'); // the row
            await page.keyboard.press('ArrowDown'); // a row that is gone
            await page.keyboard.press('Enter');
            const goTo = (row, side, moveFocus = true) => ({ type: 'goTo', picture: 1, table: 'cut', row, side, moveFocus });
            assert.deepEqual(await sent(), [goTo(0, 'now'), goTo(0, 'before'), goTo(0, 'before'), goTo(0, 'now'), goTo(1, 'before')]);
            await page.getByRole('button', { name: 'Before: b.hotroom:3', exact: true }).click();
            await page.getByRole('button', { name: 'Now: b.hotroom:4', exact: true }).click();
            await page.locator('td', { hasText: '34 1/4"' }).click({ position: { x: 4, y: 4 } });
            assert.deepEqual(await sent(), [goTo(0, 'before', false), goTo(0, 'now', false), goTo(0, 'now', false)]);
        });
        await steps.step('page: a comparison is copied, its texts shown side by side, and what it says never becomes markup', async () => {
            await page.getByRole('button', { name: 'Copy as Markdown' }).click();
            await page.getByRole('button', { name: 'Show Texts Side by Side' }).click();
            assert.deepEqual(await sent(), [{ type: 'copyMarkdown' }, { type: 'showTexts' }]);
            assert.equal(await page.locator('main img, main script, main b, main i').count(), 0);
            await show(2, { ...comparison, tables: [], markdown: undefined }, compared);
            assert.deepEqual([await page.getByRole('button', { name: 'Copy as Markdown' }).isDisabled(), await page.getByRole('button', { name: 'Show Texts Side by Side' }).isDisabled(), await page.locator('nav.contents').isVisible()], [true, true, false]);
            await page.locator('.nothing', { hasText: 'nothing to compare' }).waitFor();
        });
        await steps.step('page: no script error', () => assert.deepEqual(troubles, []));
    } finally {
        await browser.close();
    }
}
