import { mkdirSync } from 'node:fs';
import path from 'node:path';
import type { JobAnalysis } from '../../../language/src/analyze.js';
import { nearestName } from '../../../language/src/core/nearest.js';
import { showList } from '../../../language/src/core/show.js';
import { drawSheets } from '../../../language/src/drawings/drawing-set.js';
import { paperNames, type PaperName } from '../../../language/src/drawings/paper.js';
import type { Sheet } from '../../../language/src/drawings/sheet.js';
import { drawingNotes, titleFacts } from '../../../language/src/drawings/title-facts.js';
import { sheetDxf } from '../../../language/src/drawings/dxf.js';
import { sheetsPdf } from '../../../language/src/drawings/pdf.js';
import { sheetSvg } from '../../../language/src/drawings/svg.js';
import { viewNames, type ViewName } from '../../../language/src/drawings/views/view.js';
import { withTextFindings } from '../../../language/src/renderings/job-trace.js';
import { jobName } from '../../../language/src/renderings/rendered-job.js';
import { showCount } from '../../../language/src/renderings/show-figures.js';
import type { Command } from './command.js';
import { CommandFailure, exitCodes, usageFailure } from './exit-codes.js';
import { exitCodeFor, failOnOption, rootOption } from './fail-on.js';
import { findFiles, reasonOf, shown } from './files.js';
import { SettingsFiles, settingsOptions } from './settings-files.js';
import { todayOf, todayOption } from './today-option.js';
import { openWorkspace, type Workspace } from './workspace.js';
import { writeWhole } from './written-file.js';

const formats = ['svg', 'pdf', 'dxf'] as const;
type Format = typeof formats[number];

export const draw: Command = {
    name: 'draw', takes: 'FILES…', summary: 'Draw the jobs in the files, each view on a sheet true to scale.',
    doc: [
        'One file for each view, named after the job and the view, in the folder --out names; as pdf one file for each job, a sheet a page. A view the job has nothing for is left out.',
        'svg and pdf are true to scale when they are printed at their own size. dxf is the view alone in real millimetres or inches, on layers named after what is on them.',
        'A job with errors is drawn as far as it is sound, its sheets say so, and the exit code says that something is wrong.',
    ],
    options: [
        { name: 'view', value: 'NAME', choices: ['all', ...viewNames], doc: `One view, or all (default): ${viewNames.join(', ')}.` },
        { name: 'format', value: 'FORMAT', choices: formats, doc: 'svg (default), pdf or dxf.' },
        { name: 'out', value: 'DIR', doc: 'The folder the files go into; it is made when it is not there. Default: drawings.' },
        { name: 'paper', value: 'SIZE', choices: paperNames, doc: 'a3, a4, tabloid or letter. Default: a3 for jobs in millimetres, tabloid for jobs in inches.' },
        { name: 'job', value: 'NAME', doc: 'Only the job of this name.' },
        failOnOption, rootOption, ...settingsOptions, todayOption,
    ],
    examples: ['hotroom draw birch-point.hotroom --format pdf', 'hotroom draw birch-point.hotroom --view plan --format dxf --out sheets'],
    async run(args, console) {
        if (args.files.length === 0) throw usageFailure('hotroom draw wants job files, such as hotroom draw birch-point.hotroom.');
        const out = args.value('out') ?? 'drawings';
        const workspace = await openWorkspace(findFiles(args.files, console.cwd, args.value('root')), console.cwd, { settings: new SettingsFiles(args, console.cwd), today: todayOf(args, console) });
        for (const remark of workspace.remarks) console.stderr.write(`hotroom: ${remark}\n`);
        const jobs = chosenJobs(workspace, args.value('job'));
        const view = args.value('view') ?? 'all';
        const format = (args.value('format') ?? 'svg') as Format;
        const paper = args.value('paper') as PaperName | undefined;
        const wanted = view === 'all' ? viewNames : [view as ViewName];
        const stems = new Map<string, number>();
        for (const analysis of jobs) {
            const sheets = drawSheets(analysis, wanted, paper);
            if (sheets.length === 0) console.stderr.write(`hotroom: there is nothing to draw of ${shown(jobName(analysis.job))}${view === 'all' ? ': its room has no size yet' : ` in the view ${view}`}.\n`);
            for (const [name, content] of await filesOf(stemOf(analysis.job, stems), analysis, sheets, format)) {
                write(path.resolve(console.cwd, out), name, content, path.join(out, name));
                console.stdout.write(`${path.join(out, name)}\n`);
            }
        }
        const findings = [...new Set([...workspace.settingsFindings, ...jobs.flatMap(analysis => analysis.findings)])];
        const errors = findings.filter(({ severity }) => severity === 'error').length;
        if (errors > 0) console.stderr.write(`hotroom: the drawings stand with ${showCount(errors, 'error')}. Do not build before ${errors === 1 ? 'it is' : 'they are'} settled; hotroom check says what is wrong.\n`);
        return exitCodeFor(findings, args);
    },
};

type Analysis = JobAnalysis;

function chosenJobs({ files }: Workspace, name: string | undefined): readonly Analysis[] {
    const all = files.flatMap(file => file.analysis.jobs.map(job => withTextFindings(job, file.analysis)));
    const names = all.map(({ job }) => jobName(job));
    if (all.length === 0) throw usageFailure(`There is no job in ${showList(files.map(file => shown(file.name)))}.`);
    if (name === undefined) return all;
    const chosen = all.filter(({ job }) => jobName(job) === name);
    if (chosen.length > 0) return chosen;
    const meant = nearestName(name, names);
    throw usageFailure(`There is no job called ${shown(name)}. ${meant !== undefined ? `Is ${meant} meant?` : `There ${names.length === 1 ? 'is' : 'are'} ${showList(names)}.`}`);
}

/** The start of a job's file names; two jobs of one name are numbered. */
function stemOf(job: Analysis['job'], stems: Map<string, number>): string {
    const stem = [jobName(job), ...(job.variant ? [job.variant.name] : [])].join('-').replaceAll('_', '-');
    const count = (stems.get(stem) ?? 0) + 1;
    stems.set(stem, count);
    return count === 1 ? stem : `${stem}-${count}`;
}

/** What is written of one job: a file a sheet, or one of all sheets. */
async function filesOf(stem: string, analysis: Analysis, sheets: readonly Sheet[], format: Format): Promise<readonly (readonly [string, string | Uint8Array])[]> {
    switch (format) {
        case 'svg': return sheets.map(sheet => [`${stem}-${sheet.view}.svg`, sheetSvg(sheet)]);
        case 'dxf': return sheets.map(sheet => [`${stem}-${sheet.view}.dxf`, sheetDxf(sheet, analysis.job.unit, drawingNotes(sheet, analysis))]);
        case 'pdf': {
            const [only, ...more] = sheets;
            if (!only) return [];
            return [[more.length > 0 ? `${stem}.pdf` : `${stem}-${only.view}.pdf`, await sheetsPdf(sheets, titleFacts(analysis).job)]];
        }
        default: return format satisfies never;
    }
}

function write(folder: string, name: string, content: string | Uint8Array, said: string): void {
    try {
        mkdirSync(folder, { recursive: true });
    } catch (error) {
        throw new CommandFailure(exitCodes.unreadable, `Cannot make the folder ${shown(folder)}: ${reasonOf(error)}.`);
    }
    writeWhole(path.join(folder, name), content, said);
}
