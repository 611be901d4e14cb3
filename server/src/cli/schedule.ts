import path from 'node:path';
import { electricalScheduleDocument } from '../../../language/src/renderings/electrical-schedule.js';
import { electricalScheduleCsv, electricalScheduleExport } from '../../../language/src/renderings/electrical-schedule-data.js';
import { documentHtml } from '../../../language/src/renderings/html.js';
import { documentMarkdown } from '../../../language/src/renderings/markdown.js';
import { documentText } from '../../../language/src/renderings/report-text.js';
import { showCount } from '../../../language/src/renderings/show-figures.js';
import { chosenJobs, jobOption, type ChosenJob } from './chosen-jobs.js';
import type { Command } from './command.js';
import { usualWidth, widthOf } from './console.js';
import { usageFailure } from './exit-codes.js';
import { exitCodeFor, failOnOption, rootOption } from './fail-on.js';
import { findFiles } from './files.js';
import { SettingsFiles, settingsOptions } from './settings-files.js';
import { todayOf, todayOption } from './today-option.js';
import { openWorkspace } from './workspace.js';
import { writeWhole } from './written-file.js';

export const schedule: Command = {
    name: 'schedule', takes: 'FILES…', summary: 'Print the electrical schedule of the jobs in the files, for a licensed electrician to confirm.',
    doc: [
        'For each heater: what the site, the manual and the run give, and every figure of its circuit with its formula, its inputs and its source; then what is not given and what is not checked. Under the IEC rules the zones stand in it with the limit of their scope.',
        'It is no approval: a licensed electrician checks every figure and confirms it before any work.',
        'A job with errors still gives what can be worked out; the exit code says that something is wrong.',
    ],
    options: [
        jobOption,
        { name: 'format', value: 'FORMAT', choices: ['text', 'markdown', 'csv', 'json', 'html'], doc: 'text (default), markdown, csv, json or html.' },
        { name: 'out', value: 'FILE', doc: 'Write to a file instead of the terminal.' },
        failOnOption, rootOption, ...settingsOptions, todayOption,
    ],
    examples: ['hotroom schedule birch-point.hotroom', 'hotroom schedule birch-point.hotroom --format html --out birch-point-electrical.html'],
    async run(args, console) {
        if (args.files.length === 0) throw usageFailure('hotroom schedule wants job files.');
        const out = args.value('out');
        // A schedule written over a job or a catalogue would be the loss of it.
        if (out !== undefined && path.extname(out).toLowerCase() === '.hotroom') throw usageFailure(`${out} is the name of a job file, and the schedule would take its place. Give --out another name, such as schedule.html.`);
        const workspace = await openWorkspace(findFiles(args.files, console.cwd, args.value('root')), console.cwd, { settings: new SettingsFiles(args, console.cwd), today: todayOf(args, console) });
        for (const remark of workspace.remarks) console.stderr.write(`hotroom: ${remark}\n`);
        const jobs = chosenJobs(workspace, args);
        // a file has no width of its own, whatever terminal it was made in
        const text = render(jobs, args.value('format') ?? 'text', out === undefined ? widthOf(console.stdout) : usualWidth);
        if (out === undefined) console.stdout.write(text); else writeWhole(path.resolve(console.cwd, out), text, out);
        const findings = [...new Set([...workspace.settingsFindings, ...jobs.flatMap(({ analysis }) => analysis.findings)])];
        const errors = findings.filter(({ severity }) => severity === 'error').length;
        if (errors > 0) console.stderr.write(`hotroom: the schedule stands with ${showCount(errors, 'error')}; hotroom check says what is wrong.\n`);
        return exitCodeFor(findings, args);
    },
};

function render(jobs: readonly ChosenJob[], format: string, width: number): string {
    const documents = () => jobs.map(({ file, analysis }) => electricalScheduleDocument(analysis, { catalogues: file.catalogues }));
    switch (format) {
        case 'json': return `${JSON.stringify(electricalScheduleExport(jobs.map(({ analysis }) => analysis)), undefined, 2)}\n`;
        case 'csv': return electricalScheduleCsv(jobs.map(({ analysis }) => analysis));
        case 'markdown': return documents().map(documentMarkdown).join('\n');
        case 'html': return documentHtml(documents());
        default: return documents().map(document => documentText(document, width)).join('\n\n');
    }
}
