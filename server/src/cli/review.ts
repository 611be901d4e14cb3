import path from 'node:path';
import { compareJobs, type ComparedJob } from '../../../language/src/compare/compare-jobs.js';
import { nearestName } from '../../../language/src/core/nearest.js';
import { showList } from '../../../language/src/core/show.js';
import { Places } from '../../../language/src/renderings/findings-text.js';
import { withTextFindings } from '../../../language/src/renderings/job-trace.js';
import { documentMarkdown } from '../../../language/src/renderings/markdown.js';
import { isReadWhole, jobName } from '../../../language/src/renderings/rendered-job.js';
import { documentText } from '../../../language/src/renderings/report-text.js';
import { reviewHtml } from '../../../language/src/review/review-html.js';
import { reviewExport } from '../../../language/src/review/review-json.js';
import { reviewReport, type ReviewReport } from '../../../language/src/review/review-report.js';
import { reviewTables } from '../../../language/src/review/review-tables.js';
import type { ParsedArguments } from './arguments.js';
import type { Command } from './command.js';
import { loadSides, wantedSides } from './compared-sides.js';
import { usualWidth, widthOf, type Console } from './console.js';
import { exitCodes, unreadable, usageFailure } from './exit-codes.js';
import { exitCodeFor, failOnOption, rootOption } from './fail-on.js';
import { findFiles, shown } from './files.js';
import { SettingsFiles, settingsOptions } from './settings-files.js';
import { todayOption, todayOf } from './today-option.js';
import { openWorkspace, type CheckedFile, type Workspace } from './workspace.js';
import { writeWhole } from './written-file.js';

type ReviewedJob = { readonly file: CheckedFile; readonly analysis: CheckedFile['analysis']['jobs'][number] };

export const review: Command = {
    name: 'review', takes: 'FILES…', summary: 'Print the review report of the jobs in the files: findings, waivers, figures to sign, sources.',
    doc: [
        'The report is what somebody looks at before wood is cut. It ends with the block to sign, which carries the fingerprint of the model: a job that holds a sign_off with it tells when it changes afterwards.',
        'html is one page that needs nothing else, to print on A4 or letter or to send. --since puts what changed in meaning beside the findings and marks those that are new.',
        'A report is no approval: the heater\'s manual, the local code and the authority that applies it decide.',
    ],
    options: [
        { name: 'job', value: 'NAME', doc: 'Only the job of this name.' },
        { name: 'format', value: 'FORMAT', choices: ['text', 'markdown', 'html', 'json'], doc: 'text (default), markdown, html or json.' },
        { name: 'out', value: 'FILE', doc: 'Write to a file instead of the terminal.' },
        { name: 'since', value: 'BEFORE', doc: 'A file, folder or git revision to compare with, as hotroom diff takes it; with one file or folder.' },
        { name: 'fingerprint', doc: 'Print the fingerprint and the name of each job, and nothing else.' },
        failOnOption, rootOption, ...settingsOptions, todayOption,
    ],
    examples: ['hotroom review birch-point.hotroom', 'hotroom review birch-point.hotroom --format html --since main --out review.html', 'hotroom review birch-point.hotroom --fingerprint'],
    async run(args, console) {
        if (args.files.length === 0) throw usageFailure('hotroom review wants job files, such as hotroom review birch-point.hotroom.');
        const out = args.value('out');
        const since = args.value('since');
        const wantsFingerprint = args.flag('fingerprint') === true;
        if (out !== undefined && path.extname(out).toLowerCase() === '.hotroom') throw usageFailure(`${shown(out)} is the name of a job file, and the report would take its place. Give --out another name, such as review.html.`);
        if (since !== undefined && args.files.length !== 1) throw usageFailure('--since goes with one file or folder.');
        if (wantsFingerprint && (args.value('format') !== undefined || since !== undefined)) throw usageFailure('--fingerprint prints lines of text; it goes with neither --format nor --since.');
        const workspace = await openWorkspace(findFiles(args.files, console.cwd, args.value('root')), console.cwd, { settings: new SettingsFiles(args, console.cwd), today: todayOf(args, console) });
        for (const remark of workspace.remarks) console.stderr.write(`hotroom: ${remark}\n`);
        const jobs = chosenJobs(workspace, args);
        const write = (text: string): void => { if (out === undefined) console.stdout.write(text); else writeWhole(path.resolve(console.cwd, out), text, out); };
        if (wantsFingerprint) {
            const unread = jobs.find(({ analysis }) => !isReadWhole(analysis.job));
            if (unread) throw unreadable(`Part of job ${shown(jobName(unread.analysis.job))} cannot be read, so it has no fingerprint; hotroom check says what is wrong.`);
            write(jobs.map(({ analysis: { job, results } }) => `${results.fingerprint}  ${shown(jobName(job))}\n`).join(''));
            return exitCodes.none;
        }
        const compared = since === undefined ? undefined : await comparedWith(since, args, console);
        write(render(jobs.map(job => reportOf(job, workspace, args, console, since, compared)), args.value('format') ?? 'text', out === undefined ? widthOf(console.stdout) : usualWidth));
        return exitCodeFor([...new Set([...workspace.settingsFindings, ...jobs.flatMap(({ analysis }) => analysis.findings)])], args);
    },
};

function chosenJobs({ files }: Workspace, args: ParsedArguments): readonly ReviewedJob[] {
    const all = files.flatMap(file => file.analysis.jobs.map(job => ({ file, analysis: withTextFindings(job, file.analysis) })));
    if (all.length === 0) throw usageFailure(`There is no job in ${showList(files.map(file => shown(file.name)))}.`);
    const name = args.value('job');
    const chosen = name === undefined ? all : all.filter(({ analysis }) => jobName(analysis.job) === name);
    if (name === undefined || chosen.length > 0) return chosen;
    const names = all.map(({ analysis }) => jobName(analysis.job));
    const meant = nearestName(name, names);
    throw usageFailure(`There is no job called ${shown(name)}. ${meant === undefined ? `There ${names.length === 1 ? 'is' : 'are'} ${showList(names)}.` : `Is ${meant} meant?`}`);
}

async function comparedWith(since: string, args: ParsedArguments, console: Console): Promise<readonly ComparedJob[]> {
    const [before, after] = await wantedSides([since, ...args.files], console.cwd);
    const [old, now] = await loadSides(before, after, args, console);
    return compareJobs(old.jobs, now.jobs);
}

function reportOf({ file, analysis }: ReviewedJob, { sources }: Workspace, args: ParsedArguments, console: Console, since: string | undefined, compared: readonly ComparedJob[] = []): ReviewReport {
    const places = new Places(sources);
    const name = jobName(analysis.job);
    // Of several files the one whose path ends as the side names it.
    const own = compared.filter(({ after }) => after?.model.model.job.name === name).find(({ after }) => file.name === after?.file || file.name.endsWith(`/${after?.file ?? ''}`)) ?? compared.find(({ after }) => after?.model.model.job.name === name);
    return reviewReport(analysis, {
        file: file.name, today: todayOf(args, console), catalogues: file.catalogues,
        // Folders would only take room from the words; the report names its file, and its catalogues, once.
        showPlace: at => places.showLine(at).split('/').at(-1) ?? '',
        ...(since !== undefined && own && { since: { label: since, compared: own } }),
    });
}

function render(reports: readonly ReviewReport[], format: string, width: number): string {
    switch (format) {
        case 'html': return reviewHtml(reports);
        case 'json': return `${JSON.stringify(reviewExport(reports), undefined, 2)}\n`;
        case 'markdown': return reports.map(report => documentMarkdown(reviewTables(report))).join('\n');
        default: return reports.map(report => documentText(reviewTables(report), width)).join('\n\n');
    }
}
