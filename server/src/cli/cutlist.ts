import path from 'node:path';
import type { ReportedFinding } from '../../../language/src/core/finding.js';
import type { Span } from '../../../language/src/core/span.js';
import { cutListDocument, jobGroups } from '../../../language/src/renderings/cut-list-document.js';
import { cutListExport } from '../../../language/src/renderings/cut-list-json.js';
import { cutListCsv } from '../../../language/src/renderings/cut-list-tables.js';
import { Places } from '../../../language/src/renderings/findings-text.js';
import { jobTrace } from '../../../language/src/renderings/job-trace.js';
import { documentMarkdown } from '../../../language/src/renderings/markdown.js';
import { panelSchedule, panelScheduleCsv } from '../../../language/src/renderings/panel-schedule.js';
import { jobName } from '../../../language/src/renderings/rendered-job.js';
import { documentText } from '../../../language/src/renderings/report-text.js';
import { stockPlanCsv } from '../../../language/src/renderings/stock-plan-tables.js';
import { scaleOf, showCount } from '../../../language/src/renderings/show-figures.js';
import type { PlannedStock } from '../../../language/src/renderings/stock-tasks.js';
import { HighsInProcess } from '../solver/highs.js';
import type { ParsedArguments } from './arguments.js';
import { chosenJobs, jobOption, type ChosenJob } from './chosen-jobs.js';
import type { Command } from './command.js';
import { usualWidth, widthOf, type Console } from './console.js';
import { usageFailure } from './exit-codes.js';
import { exitCodeFor, failOnOption, rootOption } from './fail-on.js';
import { findFiles, shown } from './files.js';
import { SettingsFiles, settingsOptions } from './settings-files.js';
import { todayOption, todayOf } from './today-option.js';
import { openWorkspace, type CheckedFile, type Workspace } from './workspace.js';
import { planJobStock } from './stock-planning.js';
import { writeWhole } from './written-file.js';

interface ListedJob extends ChosenJob { readonly planned?: readonly PlannedStock[] }

export const cutlist: Command = {
    name: 'cutlist', takes: 'FILES…', summary: 'Print the cut list, the stock plan and the panel schedule of the jobs in the files.',
    doc: [
        'The list is grouped as the saw is set up: by stock and section, longest piece first. It ends with what is not on it. The stock plan says which boards to pull and how to cut them at least cost, whether that is proven, and what could not be planned. The panel schedule names every wall and ceiling panel.',
        'A job with errors still gives what is sound of it; the exit code says that something is wrong.',
        'As csv one table is printed: the parts, or the one --table names. With --out the panels are written beside the parts as FILE-panels.csv, and with --stock the plan as FILE-stock-plan.csv.',
    ],
    options: [
        jobOption,
        { name: 'format', value: 'FORMAT', choices: ['text', 'markdown', 'csv', 'json'], doc: 'text (default), markdown, csv or json.' },
        { name: 'table', value: 'TABLE', choices: ['parts', 'panels', 'stock'], doc: 'With csv, the one table to give: parts, panels or stock.' },
        { name: 'out', value: 'FILE', doc: 'Write to a file instead of the terminal.' },
        { name: 'stock', isNegatable: true, doc: 'Whether to plan the stock. Default: yes, but not for csv.' },
        { name: 'seconds', value: 'N', doc: 'Longest time for the stock plan of one job; past it the quick plan stands. Default: 20.' },
        failOnOption, rootOption, ...settingsOptions, todayOption,
    ],
    examples: ['hotroom cutlist birch-point.hotroom', 'hotroom cutlist birch-point.hotroom --format csv --stock --out birch-point.csv'],
    async run(args, console) {
        if (args.files.length === 0) throw usageFailure('hotroom cutlist wants job files.');
        const format = args.value('format') ?? 'text';
        const out = args.value('out');
        const table = args.value('table');
        if (table !== undefined && format !== 'csv') throw usageFailure('--table goes with --format csv; the other formats hold every table.');
        if (table === 'stock' && args.flag('stock') === false) throw usageFailure('--table stock and --no-stock do not go together.');
        const wantsStock = table === undefined ? args.flag('stock') ?? format !== 'csv' : table === 'stock';
        // A list written over a job or a catalogue would be the loss of it.
        if (out !== undefined && path.extname(out).toLowerCase() === '.hotroom') throw usageFailure(`${out} is the name of a job file, and the list would take its place. Give --out another name, such as list.csv.`);
        if (format === 'csv' && wantsStock && table === undefined && out === undefined) throw usageFailure('Two tables do not go into one csv. Give --out FILE for both, or --table stock for the plan alone.');
        const seconds = secondsOf(args);
        const workspace = await openWorkspace(findFiles(args.files, console.cwd, args.value('root')), console.cwd, { settings: new SettingsFiles(args, console.cwd), today: todayOf(args, console) });
        for (const remark of workspace.remarks) console.stderr.write(`hotroom: ${remark}\n`);
        const jobs = await planned(chosenJobs(workspace, args), wantsStock ? seconds : undefined);
        const files = render(jobs, workspace, { format, table }, console, out);
        for (const [name, text] of files) if (name === undefined) console.stdout.write(text); else writeWhole(path.resolve(console.cwd, name), text, name);
        // a mistake of the text as a whole concerns every job of its file, and counts once
        const findings = [...new Set([...workspace.settingsFindings, ...jobs.flatMap(({ analysis }) => analysis.findings)])];
        warn(findings, console);
        for (const line of jobs.flatMap(unplanned)) console.stderr.write(`hotroom: ${line}\n`);
        return exitCodeFor(findings, args);
    },
};

function secondsOf(args: ParsedArguments): number {
    const written = args.value('seconds');
    if (written === undefined) return 20;
    const seconds = Number(written);
    if (!(seconds > 0 && seconds <= 86_400)) throw usageFailure(`--seconds wants a number above 0, up to a day, not ${shown(written)}.`);
    return seconds;
}

async function planned(jobs: readonly ListedJob[], seconds: number | undefined): Promise<readonly ListedJob[]> {
    if (seconds === undefined) return jobs;
    const solver = new HighsInProcess();
    const done: ListedJob[] = [];
    for (const job of jobs) done.push({ ...job, planned: await planJobStock(job.analysis, solver, seconds) });
    return done;
}

/** Texts with the file each goes to; without a name it goes to the terminal. */
function render(jobs: readonly ListedJob[], { sources }: Workspace, { format, table }: { readonly format: string; readonly table: string | undefined }, console: Console, out: string | undefined): readonly (readonly [string | undefined, string])[] {
    const places = new Places(sources);
    const showPlace = places.showLine.bind(places);
    // in a list of one file its folder would only take room from the words
    const ownName = (file: CheckedFile) => (span: Span): string => span.uri === file.uri ? showPlace(span).split('/').at(-1) ?? '' : showPlace(span);
    const documents = () => jobs.map(({ file, analysis, planned: plan }) => cutListDocument(analysis, plan, { catalogues: file.catalogues, showPlace: ownName(file) }));
    switch (format) {
        case 'json': return [[out, `${JSON.stringify(cutListExport(jobs.map(({ analysis, planned: plan }) => ({ analysis, ...(plan && { planned: plan }), showFile: sources.nameOf }))), undefined, 2)}\n`]];
        case 'markdown': return [[out, documents().map(documentMarkdown).join('\n')]];
        case 'csv': {
            const parts = (): string => cutListCsv(jobs.map(({ analysis }) => ({ trace: jobTrace(analysis), groups: jobGroups(analysis.job, analysis.results.parts), options: { unit: scaleOf(analysis), showPlace } })));
            const panels = (): string => panelScheduleCsv(jobs.map(({ analysis }) => ({ trace: jobTrace(analysis), panels: panelSchedule(analysis), unit: scaleOf(analysis) })));
            const plan = (): string => stockPlanCsv(jobs.flatMap(({ analysis, planned: made }) => made ? [{ trace: jobTrace(analysis), planned: made, unit: scaleOf(analysis) }] : []));
            if (table !== undefined) return [[out, table === 'panels' ? panels() : table === 'stock' ? plan() : parts()]];
            if (out === undefined) return [[out, parts()]];
            const isPlanned = jobs.some(({ planned: made }) => made !== undefined);
            return [[out, parts()], [besideName(out, 'panels'), panels()], ...(isPlanned ? [[besideName(out, 'stock-plan'), plan()] as const] : [])];
        }
        default: {
            // a file has no width of its own, whatever terminal it was made in
            const width = out === undefined ? widthOf(console.stdout) : usualWidth;
            return [[out, documents().map(document => documentText(document, width)).join('\n\n')]];
        }
    }
}

const besideName = (out: string, what: string): string => {
    const { dir, name, ext } = path.parse(out);
    return path.join(dir, `${name}-${what}${ext === '' ? '.csv' : ext}`);
};

function warn(findings: readonly ReportedFinding[], { stderr }: Console): void {
    const errors = findings.filter(({ severity }) => severity === 'error').length;
    if (errors > 0) stderr.write(`hotroom: the list stands with ${showCount(errors, 'error')}. Do not cut before ${errors === 1 ? 'it is' : 'they are'} settled; hotroom check says what is wrong.\n`);
}

/** What the stock plan leaves out: a csv has no room to say so, and a piece nobody cut is found on site. */
function unplanned({ analysis: { job }, planned: plans = [] }: ListedJob): string[] {
    const pieces = plans.reduce((total, { request, plan, parts }) => total + (request ? plan?.unplaceable ?? [] : parts).reduce((count, piece) => count + piece.count, 0), 0);
    return pieces === 0 ? [] : [`the stock plan of ${shown(jobName(job))} leaves out ${showCount(pieces, 'piece')}; the list without --format csv says which and why.`];
}
