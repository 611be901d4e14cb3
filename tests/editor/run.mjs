/**
 * The packaged extension in a real editor, used as a person would: a mistake is seen and mended, the cut list is read,
 * walked with the keyboard and saved, an edit is compared with the last commit. The last line printed is `N passed, N failed`.
 *
 * Needs `hotroom.vsix` and `dist/` (`npm run package` makes both). Nothing leaves the machine once the host is installed.
 */
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { checkAccessibility } from './accessibility.mjs';
import { findBrowser } from './browser.mjs';
import { fetchHost } from './fetch-host.mjs';
import { cutNetwork } from './network.mjs';
import { pageSteps } from './page-steps.mjs';
import { here, root, screens } from './paths.mjs';
import { Steps } from './steps.mjs';
import { themes, waitFor, Workbench } from './workbench.mjs';

/** Every text the suite expects to read. A change in wording is a change here and nowhere else. */
const expected = {
    // The job is the project's own example with one word misspelt, so that suite and example cannot drift apart.
    file: 'birch-point.hotroom',
    sound: `height    7'0"`,
    mistaken: `heigth    7'0"`,
    languageMode: 'Hotroom',
    finding: /heigth/,
    fixTitle: /height/,
    hoverOn: 'room {',
    hover: /volume/i,
    completeBefore: '    room {',
    completePrefix: 'dra',
    completion: 'drain',
    commands: [
        'Hotroom: Show Cut List and Stock Plan', 'Hotroom: Save Cut List as CSV', 'Hotroom: Compare Job with Last Commit', 'Hotroom: Compare Job with Base of Branch', 'Hotroom: Compare Job with a Revision…',
        'Hotroom: Compare Job with Another Job…', 'Hotroom: Compare Job with Another File…',
        'Hotroom: Show Review Report', 'Hotroom: Save Review Report', 'Hotroom: Restart Language Server', 'Hotroom: Show Log',
    ],
    showReview: 'Hotroom: Show Review Report',
    compareCommit: 'Hotroom: Compare Job with Last Commit',
    compareJob: 'Hotroom: Compare Job with Another Job…',
    committedTop: 'top       37"',
    changedTop: 'top       38"',
    noRepository: 'Cannot compare with the last commit: this is no git repository.',
    showCutList: 'Hotroom: Show Cut List and Stock Plan',
    restart: 'Hotroom: Restart Language Server',
    jobTitle: 'Birch Point bathhouse',
    twoJobsFile: 'two-jobs.hotroom',
    twoJobs: ['Larch Bank, first unit', 'Larch Bank, second unit'],
    lineFile: 'larch-line.hotroom',
    parameterDoc: 'Outside width along the front',
    edited: /Edited since this list was made/,
    saved: /^Saved .*\.csv/,
};

/**
 * Trouble in a log that the workbench makes by itself, whatever extension runs. Its own extension for JSON writes to its closed channel when the window
 * reloads; the same from any other extension counts.
 */
const hostsOwnNoise = [/build\/Release\/watchdog/, /Error: Channel has been closed\n(?:\s+at .*\n)*\s+at .*\/extensions\/json-language-features\/client\//];
/** A log as its entries: a line with its time, and the lines of a stack below it. */
const entriesOf = text => text.split(/\n(?=\d{4}-\d{2}-\d{2} )/);

const vsix = path.join(root, 'hotroom.vsix');
const host = fetchHost();
const browserFrom = findBrowser().from;
const network = cutNetwork(fileURLToPath(import.meta.url));
console.log(`network: ${network === 'cut' ? 'cut off but for this machine' : 'this system allows no cut; watched instead'}; browser: ${browserFrom}`);

fs.rmSync(screens, { recursive: true, force: true });
fs.mkdirSync(screens, { recursive: true });
const workbench = new Workbench(host, [path.join(root, 'examples'), path.join(here, 'workspace')]);
const shot = name => workbench.page.screenshot({ path: path.join(screens, `${name}.png`) });
const steps = new Steps(async number => { if (workbench.page) await shot(`failed-step-${number}`).catch(() => {}); });
const keys = { press: key => workbench.page.keyboard.press(key), type: text => workbench.page.keyboard.type(text) };
const mine = path.join(workbench.workspace, expected.file);
{
    const example = fs.readFileSync(mine, 'utf8');
    assert.equal(example.split(expected.sound).length, 2, `${expected.file} holds ${expected.sound} once`);
    fs.writeFileSync(mine, example.replace(expected.sound, expected.mistaken));
}
/** Line and column, from 1, just inside the first place a text stands in the saved file. */
const placeOf = text => {
    const lines = fs.readFileSync(mine, 'utf8').split('\n');
    const line = lines.findIndex(content => content.includes(text));
    if (line < 0) throw new Error(`${expected.file} holds no "${text}".`);
    return [line + 1, lines[line].indexOf(text) + 2];
};
/** What the command line prints of the saved job. */
const printed = format => execFileSync(process.execPath, [path.join(root, 'dist/cli.cjs'), 'cutlist', expected.file, '--format', format], { cwd: workbench.workspace, encoding: 'utf8' });
const printedParts = () => JSON.parse(printed('json')).jobs[0].parts;
/** Rows of all tables: the lines of a Markdown table but for its two of heading. */
const printedRows = () => printed('markdown').split('\n').filter(line => line.startsWith('| ')).length - 2 * printed('markdown').split('\n').filter(line => line.startsWith('| ---')).length;
const lineOfPart = mark => {
    const part = printedParts().find(candidate => candidate.mark === mark);
    assert.ok(part?.at, `the command line prints ${mark} and its source`);
    return fs.readFileSync(mine, 'utf8').slice(0, part.at.start).split('\n').length;
};
const [cutListPage, comparisonPage] = ['cut-list', 'comparison'].map(name => `main[data-page="${name}"]`);
/** Makes the workspace a repository with one commit. */
const commitAll = () => {
    const git = (...words) => execFileSync('git', ['-c', 'user.name=Design Office', '-c', 'user.email=office@example.invalid', ...words], { cwd: workbench.workspace, env: { ...process.env, GIT_CONFIG_GLOBAL: '/dev/null' } });
    git('init', '--quiet', '--initial-branch=main');
    git('add', '--all');
    git('commit', '--quiet', '--message', 'as drawn');
};
const rowsIn = frame => frame.locator('tbody tr[data-row]:not([hidden])');

try {
    await pageSteps(steps);
    await steps.step('the package installs', () => workbench.install(vsix), { needed: true });
    await steps.step('the workbench opens the folder in Restricted Mode', async () => {
        await workbench.open();
        await workbench.page.locator('#status\\.workspaceTrust', { hasText: 'Restricted Mode' }).waitFor();
    }, { needed: true });
    const { page } = workbench;

    await steps.step('a job file is known by its language', async () => {
        await workbench.openFile(expected.file);
        await page.locator('#status\\.editor\\.mode', { hasText: expected.languageMode }).waitFor();
    }, { needed: true });
    await steps.step('the mistake is underlined', () => page.locator('.monaco-editor .squiggly-error').first().waitFor());
    await steps.step('the finding stands in the Problems view with its rule', async () => {
        await keys.press('Control+Shift+M');
        const row = page.locator('.markers-panel .monaco-list-row', { hasText: expected.finding }).first();
        await row.waitFor();
        const text = (await row.innerText()).replace(/\s+/g, ' ');
        assert.match(text, /hotroom/i, 'names its source');
        await shot('problems');
        await keys.press('Control+Shift+M');
        return text;
    });
    await steps.step('its quick fix mends the text and the finding goes', async () => {
        await workbench.goTo(...placeOf(expected.mistaken));
        await keys.press('Control+.');
        const item = page.locator('.action-widget .monaco-list-row', { hasText: expected.fixTitle }).first();
        await item.waitFor();
        await shot('quick-fix');
        await item.click();
        await page.locator('.monaco-editor .squiggly-error').first().waitFor({ state: 'detached' });
        await keys.press('Control+s');
        await waitFor(() => fs.readFileSync(mine, 'utf8').includes(expected.sound), 'the mended file to be saved');
    });
    await steps.step('hover tells what was computed', async () => {
        const text = await workbench.hoverAt(...placeOf(expected.hoverOn), expected.hover);
        await shot('hover');
        await keys.press('Escape');
        return text.slice(0, 80);
    });
    await steps.step('completion offers what fits', async () => {
        await workbench.goTo(placeOf(expected.completeBefore)[0] - 2, 1);
        await keys.press('Home');
        await keys.type(expected.completePrefix);
        await keys.press('Control+Space');
        await page.locator('.suggest-widget .monaco-list-row', { hasText: expected.completion }).first().waitFor();
        await shot('completion');
        await keys.press('Escape');
        for (const _ of expected.completePrefix) await keys.press('Backspace');
    });
    await steps.step('the palette lists every command that can run, and one button stands in the editor title', async () => {
        await workbench.palette('Hotroom: ');
        for (const title of expected.commands) await page.locator('.quick-input-list .monaco-list-row', { hasText: title }).first().waitFor();
        const listed = await page.locator('.quick-input-list .monaco-list-row', { hasText: 'Hotroom: ' }).count();
        assert.equal(listed, expected.commands.length, 'commands listed');
        await workbench.closePalette();
        const title = expected.showCutList.replace('Hotroom: ', '');
        assert.equal(await page.locator(`.editor-actions .action-label[aria-label^="${title}"]`).count(), 1, 'title buttons');
    });

    let frame;
    await steps.step('the cut list opens beside the editor and shows the rows the command line prints', async () => {
        await workbench.run(expected.showCutList);
        frame = await waitFor(() => workbench.webview(cutListPage), 'the page');
        await frame.locator('h1', { hasText: expected.jobTitle }).waitFor();
        const parts = printedParts();
        assert.ok(parts.length > 0, 'the command line prints parts');
        assert.deepEqual(await marksIn(frame), parts.map(part => part.mark));
        assert.equal(await rowsIn(frame).count(), printedRows(), 'rows on the page');
        return `${parts.length} parts, ${printedRows()} rows`;
    }, { needed: true });
    await steps.step('the keyboard alone leads from a row to its source line', async () => {
        const mark = await walkToRow(frame, 2);
        await keys.press('Enter');
        await waitFor(() => page.evaluate(() => document.activeElement?.closest('.monaco-editor') !== null), 'the editor to hold the keyboard');
        await keys.press('ArrowLeft'); // to the start of what is selected
        await page.locator('#status\\.editor\\.selection', { hasText: `Ln ${lineOfPart(mark)},` }).waitFor();
        return `${mark}, line ${lineOfPart(mark)}`;
    });
    await steps.step('the cursor in the source lights up its rows', async () => {
        const { mark } = printedParts()[0];
        await workbench.goTo(lineOfPart(mark), 6);
        await frame.locator('tbody tr[aria-current="true"]', { hasText: mark }).first().waitFor();
    });
    await steps.step('a header sorts and the filter narrows, both said aloud', async () => {
        const header = frame.locator('thead th').first();
        await header.locator('button').click();
        assert.equal(await header.getAttribute('aria-sort'), 'ascending');
        await frame.locator('.said', { hasText: /^Sorted by/ }).waitFor();
        const word = printedParts()[0].mark;
        const before = await rowsIn(frame).count();
        await frame.locator('#filter').fill(word);
        const after = await rowsIn(frame).count();
        assert.ok(after > 0 && after < before, `${after} of ${before} rows match`);
        await frame.locator('.said', { hasText: /match/ }).waitFor();
        await frame.locator('#filter').fill('');
        await header.locator('button').click();
        await header.locator('button').click();
        assert.equal(await header.getAttribute('aria-sort'), 'none');
    });
    await steps.step('the list is saved as CSV', async () => {
        await frame.getByRole('button', { name: 'Save CSV' }).click();
        const input = page.locator('.quick-input-widget input').first();
        await input.waitFor();
        await page.locator('.quick-input-list .monaco-list-row', { hasText: 'cut-list' }).first().waitFor(); // which of the lists
        await keys.press('Enter');
        const name = await waitFor(async () => /[^/]+\.csv$/.exec(await input.inputValue())?.[0], 'the save dialog to name a file');
        await keys.press('Enter');
        const file = path.join(workbench.workspace, name);
        const wanted = printed('csv');
        await waitFor(() => fs.readFileSync(file, 'utf8') === wanted, 'the file to hold what the command line prints');
        await frame.locator('.said', { hasText: expected.saved }).waitFor();
        return name;
    });
    await steps.step('an edit marks the list, and saving makes it again', async () => {
        await workbench.focusEditor();
        await workbench.goTo(1, 1);
        await keys.type('// ');
        await frame.locator('.banner', { hasText: expected.edited }).waitFor();
        await shot('edited');
        await keys.press('Control+s');
        await frame.locator('body[data-condition="fresh"]').waitFor();
    });
    for (const name of Object.keys(themes)) {
        await steps.step(`nothing serious or critical for accessibility: ${name}`, async () => {
            await workbench.useTheme(name);
            await frame.locator(`body.${name === 'high-contrast-light' ? 'vscode-high-contrast-light' : `vscode-${name}`}`).waitFor();
            const { passed, grave } = await checkAccessibility(frame);
            await shot(`cut-list-${name}`);
            assert.deepEqual(grave, []);
            assert.ok(passed > 10, 'the checker looked at the page');
            return `${passed} rules passed`;
        });
    }
    let comparison;
    /** The row of the height that was edited. */
    const topRow = () => comparison.locator('tbody tr[data-row]', { hasText: 'upper.top' });
    await steps.step('without a repository a comparison says so, and that other jobs can be compared', async () => {
        await page.locator('.tab', { hasText: expected.file }).first().click();
        await workbench.run(expected.compareCommit);
        comparison = await waitFor(() => workbench.webview(comparisonPage), 'the page');
        await comparison.locator('.banner', { hasText: expected.noRepository }).waitFor();
        assert.equal(await comparison.getByRole('button', { name: 'Show Log' }).isVisible(), false, 'a refusal is no failure to look up');
    });
    await steps.step('a job that was committed and edited since is compared with the last commit, typed text and all', async () => {
        commitAll();
        await workbench.focusEditor();
        await workbench.goTo(...placeOf(expected.committedTop));
        await keys.press('End');
        for (const _ of '7"') await keys.press('Backspace');
        await keys.type('8"');
        await comparison.getByRole('button', { name: 'Refresh' }).click();
        await topRow().locator('td[data-side="before"]', { hasText: '37"' }).waitFor();
        await topRow().locator('td[data-side="now"]', { hasText: '38"' }).waitFor();
        assert.equal(fs.readFileSync(mine, 'utf8').includes(expected.changedTop), false, 'the edit is not saved');
        for (const caption of ['Figures', 'Cut again', 'Order again', 'Approve again', 'Drawing only']) await comparison.locator('caption', { hasText: caption }).waitFor();
        return `${await rowsIn(comparison).count()} rows`;
    });
    await steps.step('a row leads to its line as it is now, by the keyboard', async () => {
        await topRow().focus();
        await keys.press('Enter');
        await waitFor(() => page.evaluate(() => document.activeElement?.closest('.monaco-editor') !== null), 'the editor to hold the keyboard');
        await page.locator('.tab.active', { hasText: expected.file }).waitFor();
        await keys.press('ArrowLeft');
        await page.locator('#status\\.editor\\.selection', { hasText: `Ln ${placeOf(expected.committedTop)[0]},` }).waitFor();
    });
    await steps.step('and to the line as it was, in a text that cannot be written', async () => {
        await topRow().focus();
        await keys.press('Shift+Enter');
        await page.locator('.tab.active', { hasText: /birch-point \([0-9a-f]{7}\)\.hotroom/ }).waitFor();
        await page.locator('#status\\.editor\\.mode', { hasText: expected.languageMode }).waitFor();
        await waitFor(() => page.evaluate(() => document.activeElement?.closest('.monaco-editor') !== null), 'the editor to hold the keyboard');
        await keys.press('ArrowLeft');
        await page.locator('#status\\.editor\\.selection', { hasText: `Ln ${placeOf(expected.committedTop)[0]},` }).waitFor();
        await page.locator('.view-line', { hasText: /top\s+37"/ }).first().waitFor();
        await shot('old-text');
        await keys.type('x');
        await page.locator('.monaco-editor .message', { hasText: /read-only/i }).first().waitFor();
        await keys.press('Escape');
        await keys.press('Control+w');
    });
    for (const name of Object.keys(themes)) {
        await steps.step(`nothing serious or critical for accessibility of a comparison: ${name}`, async () => {
            await workbench.useTheme(name);
            await comparison.locator(`body.${name === 'high-contrast-light' ? 'vscode-high-contrast-light' : `vscode-${name}`}`).waitFor();
            await comparison.evaluate(() => window.scrollTo(0, 0));
            const { passed, grave } = await checkAccessibility(comparison);
            await shot(`comparison-${name}`);
            assert.deepEqual(grave, []);
            assert.ok(passed > 10, 'the checker looked at the page');
            return `${passed} rules passed`;
        });
    }
    await steps.step('the texts of both sides are shown beside each other', async () => {
        await comparison.getByRole('button', { name: 'Show Texts Side by Side' }).click();
        await page.locator('.monaco-diff-editor .view-line', { hasText: /top\s+38"/ }).first().waitFor();
        await page.locator('.monaco-diff-editor .view-line', { hasText: /top\s+37"/ }).first().waitFor();
        await shot('texts');
        await page.locator('.tab.active', { hasText: 'before and now' }).click();
        await keys.press('Control+w');
        await page.locator('.tab', { hasText: 'before and now' }).waitFor({ state: 'detached' });
    });
    await steps.step('a job is compared with another one that is picked', async () => {
        await page.locator('.tab', { hasText: expected.file }).first().click();
        await workbench.focusEditor();
        await workbench.run(expected.compareJob);
        await page.locator('.quick-input-widget input[placeholder="With which job?"]').waitFor();
        await keys.type(expected.twoJobs[0]);
        await page.locator('.quick-input-list .monaco-list-row.focused', { hasText: expected.twoJobs[0] }).waitFor();
        await shot('which-other-job');
        await keys.press('Enter');
        const other = await waitFor(async () => { const found = await workbench.webview(comparisonPage); return (await found.locator('.subtitle').innerText()).includes('larch') ? found : undefined; }, 'the other comparison');
        const count = await rowsIn(other).count();
        assert.ok(count > 10, `${count} rows`);
        await shot('comparison-with-job');
        await keys.press('Control+w');
        return `${count} rows`;
    });
    await steps.step('the review report opens beside the text, and a place of it leads to the line', async () => {
        await page.locator('.tab', { hasText: expected.file }).first().click();
        await workbench.focusEditor();
        await workbench.run(expected.showReview);
        const review = await waitFor(() => workbench.webview('body[data-subject] h1'), 'the report');
        for (const heading of ['At a glance', 'Cautions', 'Not checked']) await review.locator('h2', { hasText: heading }).first().waitFor();
        for (const name of Object.keys(themes)) {
            await workbench.useTheme(name);
            const { passed, grave } = await checkAccessibility(review);
            await shot(`review-${name}`);
            assert.deepEqual(grave, [], name);
            assert.ok(passed > 10, 'the checker looked at the page');
        }
        await review.locator('[data-place]').first().focus();
        await keys.press('Enter');
        await waitFor(() => page.evaluate(() => document.activeElement?.closest('.monaco-editor') !== null), 'the editor to hold the keyboard');
        await page.locator('.tab', { hasText: /review/i }).last().click();
        await keys.press('Control+w');
    });
    await steps.step('the edit is taken back, and the comparison says that nothing changed', async () => {
        await page.locator('.tab', { hasText: expected.file }).first().click();
        await workbench.focusEditor();
        for (let presses = 0; (await page.locator('.tab.dirty', { hasText: expected.file }).count()) > 0; presses++) {
            if (presses > 10) throw new Error('The edit does not go.');
            await keys.press('Control+z');
        }
        await page.locator('.tab', { hasText: 'what changed' }).first().click();
        comparison = await waitFor(() => workbench.webview(comparisonPage), 'the page');
        await comparison.locator('.subtitle', { hasText: 'no change of meaning' }).waitFor();
        await keys.press('Control+w');
        await page.locator('.tab', { hasText: expected.jobTitle }).first().click();
        frame = await waitFor(() => workbench.webview(cutListPage), 'the cut list');
        await workbench.focusEditor();
    });
    await steps.step('a file with two jobs asks which', async () => {
        await workbench.openFile(expected.twoJobsFile);
        await workbench.run(expected.showCutList);
        for (const title of expected.twoJobs) await page.locator('.quick-input-list .monaco-list-row', { hasText: title }).waitFor();
        await shot('which-job');
        await workbench.closePalette();
        await keys.press('Control+w');
    });
    const line = path.join(workbench.workspace, expected.lineFile);
    /** Line and column, from 1, of the first place a text stands in the file of the line of rooms, moved by some columns. */
    const placeInLine = (text, shift = 0) => {
        const lines = fs.readFileSync(line, 'utf8').split('\n');
        const at = lines.findIndex(content => content.includes(text));
        if (at < 0) throw new Error(`${expected.lineFile} holds no "${text}".`);
        return [at + 1, lines[at].indexOf(text) + 1 + shift];
    };
    await steps.step('the brackets of a series say what goes into them', async () => {
        await workbench.openFile(expected.lineFile);
        await workbench.goTo(...placeInLine('larch(72', 'larch('.length));
        await keys.press('Control+Shift+Space');
        await page.locator('.parameter-hints-widget.visible', { hasText: expected.parameterDoc }).waitFor();
        await shot('signature-help');
        await keys.press('Escape');
    });
    await steps.step('hover tells the value of a name', async () => {
        const text = await workbench.hoverAt(...placeInLine('half * 3', 1), /half/);
        await keys.press('Escape');
        return text.slice(0, 80);
    });
    await steps.step('renaming a parameter changes every use of it', async () => {
        await workbench.goTo(...placeInLine('w { takes length'));
        await keys.press('F2');
        await waitFor(() => page.evaluate(() => document.activeElement?.closest('.rename-box') !== null && document.activeElement?.tagName === 'INPUT'), 'the box for the new name to hold the keyboard');
        await keys.press('Control+a');
        await keys.type('wide');
        await keys.press('Enter');
        await keys.press('Control+s');
        const isDone = () => ['parameter wide {', 'let half = wide / 2', 'wide + 12"'].every(text => fs.readFileSync(line, 'utf8').includes(text));
        await waitFor(async () => { if (isDone()) return true; await keys.press('Control+s'); return isDone(); }, 'every use to be renamed and saved');
    });
    await steps.step('a mistake in the settings file stands in the Problems view', async () => {
        const settings = path.join(workbench.workspace, 'hotroom.json');
        fs.writeFileSync(settings, '{ "severitys": {} }\n');
        await keys.press('Control+Shift+M');
        await page.locator('.markers-panel .monaco-list-row', { hasText: /severitys/ }).first().waitFor();
        await shot('settings-file');
        fs.rmSync(settings);
        await page.locator('.markers-panel .monaco-list-row', { hasText: /severitys/ }).first().waitFor({ state: 'detached' });
        await keys.press('Control+Shift+M');
        await workbench.openFile(expected.file);
    });
    await steps.step('the language server restarts on command', async () => {
        await workbench.focusEditor();
        await workbench.run(expected.restart);
        await workbench.hoverAt(...placeOf(expected.hoverOn), expected.hover);
        await keys.press('Escape');
    });
    await steps.step('the cut list comes back after the window reloads', async () => {
        await page.reload();
        await page.locator('.tab', { hasText: expected.jobTitle }).waitFor();
        frame = await waitFor(() => workbench.webview(cutListPage), 'the page');
        await frame.locator('h1', { hasText: expected.jobTitle }).waitFor();
        assert.equal(await rowsIn(frame).count(), printedRows());
    });
    await steps.step('no request left this machine', () => assert.deepEqual([...new Set(workbench.outside)], []));
    await steps.step('no error in the extension host or in the extension\'s log, and nothing popped up', async () => {
        const logs = workbench.logs().filter(log => /remoteexthost\.log$|\/hotroom\.hotroom\//.test(log.name));
        for (const name of ['remoteexthost.log', 'Hotroom.log']) assert.ok(logs.some(log => log.name.endsWith(name)), `${name} was written`);
        const logged = logs.flatMap(log => entriesOf(log.text).filter(entry => /\[(error|critical)\]|EAI_AGAIN|ENOTFOUND/.test(entry)).map(entry => `${log.name}: ${entry}`));
        const printed = workbench.console.filter(entry => entry.kind === 'error' && /\[Extension Host\]|hotroom/i.test(entry.text)).map(entry => entry.text);
        assert.deepEqual([...logged, ...printed].filter(line => !hostsOwnNoise.some(noise => noise.test(line))), []);
        assert.deepEqual(await page.locator('.notification-toast').allInnerTexts(), []);
        return `${logs.length} logs`;
    });
    // Last, because a killed server rightly leaves its errors in the log.
    await steps.step('a language server that dies is started again', async () => {
        await workbench.openFile(expected.file);
        const before = workbench.serverProcesses();
        assert.equal(before.length, 1, 'one language server runs');
        process.kill(before[0], 'SIGKILL');
        await waitFor(() => workbench.serverProcesses().some(pid => pid !== before[0]), 'another language server');
        await workbench.hoverAt(...placeOf(expected.hoverOn), expected.hover);
        await keys.press('Escape');
    });
} finally {
    await workbench.close();
}
process.exitCode = steps.close();

/** Tabs from wherever the keyboard is into the page's rows, then down. @returns the mark of the row it ends on. */
async function walkToRow(frame, down) {
    const held = () => frame.evaluate(() => document.activeElement?.closest('tr[data-row]')?.querySelector('th')?.textContent ?? null);
    for (let presses = 0; (await held()) === null; presses++) {
        if (presses > 40) throw new Error('Tab does not reach a row.');
        await keys.press('Tab');
    }
    for (let index = 0; index < down; index++) await keys.press('ArrowDown');
    return await held();
}

/** The first column of every table that lists parts, in the order shown. */
async function marksIn(frame) {
    return await frame.locator('table').evaluateAll(tables => tables
        .filter(table => table.querySelector('thead th')?.textContent === 'Mark')
        .flatMap(table => [...table.querySelectorAll('tbody th')].map(cell => cell.textContent)));
}
