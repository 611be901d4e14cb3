import { createHash } from 'node:crypto';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Analysis } from '../../language/src/analyze.js';
import { drawSheets } from '../../language/src/drawings/drawing-set.js';
import { sheetSvg } from '../../language/src/drawings/svg.js';
import { viewNames } from '../../language/src/drawings/views/view.js';
import { jobName } from '../../language/src/renderings/rendered-job.js';
import { examplePaths, exampleText } from '../support/workspace.js';
import { openExamples } from './examples.js';

/**
 * The standard job's sheets are kept whole, to be looked at; of every other example a line for each sheet says whether its bytes are as they were when somebody
 * looked at it, with how much is drawn on it, so that a changed line hints at what changed.
 */
const standard = 'birch-point.hotroom';
let analysisOf: (path: string) => Analysis;
beforeAll(async () => { analysisOf = await openExamples(); });

describe('the standard job', () => {
    test.each(viewNames)('%s is as it was looked at', async view => {
        const [sheet] = drawSheets(analysisOf(standard).jobs[0]!, [view]);
        await expect(sheetSvg(sheet!)).toMatchFileSnapshot(`./drawings/birch-point-${view}.svg`);
    });
});

test('every other example is as it was looked at', async () => {
    const paths = examplePaths().filter(path => path !== standard && !path.startsWith('mistakes/') && !path.startsWith('line/') && /^job /m.test(exampleText(path)));
    const lines = paths.flatMap(path => analysisOf(path).jobs.flatMap(job => drawSheets(job).map(sheet => {
        const kinds = (kind: string): number => sheet.items.filter(item => item.kind === kind).length;
        return `${path} ${jobName(job.job)}${job.job.variant ? `/${job.job.variant.name}` : ''} ${sheet.view}: ${sheet.scale.text}, ${kinds('dimension')} dimensions, ${kinds('label')} names, ${createHash('sha256').update(sheetSvg(sheet)).digest('hex').slice(0, 12)}`;
    })));
    await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot('./drawings/other-jobs.lines');
});
