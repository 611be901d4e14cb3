import type { RenderedJob } from '../renderings/rendered-job.js';
import { cautions } from '../renderings/cautions.js';
import { documentNotes } from '../renderings/document-notes.js';
import { jobName } from '../renderings/rendered-job.js';
import { printable } from '../renderings/printable.js';
import type { Sheet } from './sheet.js';
import { blockHeightMm, deference, type TitleFacts } from './title-block.js';

/** What every sheet of a job says of the job, its rules and its standing. */
export function titleFacts(analysis: RenderedJob): TitleFacts {
    const { job, ruleSets, findings } = analysis;
    const { number, revision } = job.block.values;
    const errors = findings.filter(({ severity }) => severity === 'error').length;
    const name = job.block.title?.value ?? jobName(job);
    return {
        job: printable(job.variant ? `${name}, variant ${job.variant.name}` : name),
        number: printable(number?.value ?? '-'), revision: printable(revision?.value ?? '-'),
        rules: ruleSets.length === 0 ? 'none named: nothing was checked against a published rule set' : ruleSets.map(({ title, documents }) => `${title}${documents.length > 0 ? ` (${documents.map(({ edition }) => edition).join(', ')})` : ''}`).join('; '),
        standing: errors === 0 ? '' : `STANDS WITH ${errors} ${errors === 1 ? 'ERROR' : 'ERRORS'}: DO NOT BUILD FROM IT`,
        cautions,
        papers: documentNotes(analysis).filter(note => /^(Heater manual|Rules used|Accepted by|This job stands|Not checked)/.test(note)).map(printable),
        blockHeightMm: blockHeightMm + 6,
    };
}

/** What a drawing without a sheet says below it: whose it is, which revision, how the job stands, and the cautions. */
export function drawingNotes({ title }: Pick<Sheet, 'title'>, analysis: RenderedJob): readonly string[] {
    const facts = titleFacts(analysis);
    return [`${facts.job}: ${title}`, `Job number ${facts.number}, revision ${facts.revision}. Rule sets: ${facts.rules}.`, ...(facts.standing === '' ? [] : [facts.standing]), deference, ...facts.cautions];
}
