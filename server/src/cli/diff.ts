import { compareJobs, hasChanged, type ComparedJob } from '../../../language/src/compare/compare-jobs.js';
import { comparisonExport } from '../../../language/src/compare/comparison-json.js';
import { comparisonMarkdown, comparisonText } from '../../../language/src/compare/comparison-report.js';
import type { Command } from './command.js';
import { loadSides, wantedSides } from './compared-sides.js';
import { widthOf } from './console.js';
import { exitCodes, usageFailure } from './exit-codes.js';
import { rootOption } from './fail-on.js';
import { settingsOptions } from './settings-files.js';
import { todayOption } from './today-option.js';

export const diff: Command = {
    name: 'diff', takes: 'BEFORE AFTER', summary: 'Tell what changed in meaning between two files, folders or git revisions.',
    doc: [
        'Compares what the jobs come to, not their lines: parts and panels to cut again, things to order again, what has to be approved again, and what changes on the drawing only. Order, layout, units and names of calculations make no difference. A changed catalogue shows in every job it reaches.',
        'A side is a file, a folder, a git revision (main, HEAD~2, a tag) or a part of one (main:jobs). hotroom diff main..HEAD -- jobs compares two revisions, main...HEAD the later one with where they parted. One file or folder alone is compared with the last commit. A file that is there goes before a revision of the same name.',
        'Jobs are paired by file and name, then by name. git is only read, and no program a repository names is run. Files and folders are compared without git.',
    ],
    options: [
        { name: 'format', value: 'FORMAT', choices: ['text', 'markdown', 'json'], doc: 'text (default), markdown or json.' },
        { name: 'fail-on', value: 'WHAT', choices: ['changes', 'errors', 'never'], doc: 'What makes the exit code 1: changes of meaning (default), errors the later side has and the earlier has not, or never.' },
        rootOption, ...settingsOptions, todayOption,
    ],
    examples: ['hotroom diff old.hotroom new.hotroom', 'hotroom diff main..HEAD -- jobs', 'hotroom diff main jobs --format markdown'],
    async run(args, console) {
        const [before, after] = await wantedSides(args.files, console.cwd);
        const [old, now] = await loadSides(before, after, args, console);
        if (old.jobs.length === 0 && now.jobs.length === 0) throw usageFailure('There is no job on either side.');
        const jobs = compareJobs(old.jobs, now.jobs);
        const sides = { before: old.label, after: now.label };
        switch (args.value('format') ?? 'text') {
            case 'json': console.stdout.write(`${JSON.stringify(comparisonExport(jobs, sides), undefined, 2)}\n`); break;
            case 'markdown': console.stdout.write(comparisonMarkdown(jobs, sides)); break;
            default: console.stdout.write(comparisonText(jobs, sides, widthOf(console.stdout)));
        }
        const failOn = args.value('fail-on') ?? 'changes';
        const hasFailed = failOn === 'changes' ? jobs.some(hasChanged) : failOn === 'errors' && jobs.some(hasNewError);
        return hasFailed ? exitCodes.findings : exitCodes.none;
    },
};

/** Whether the later side of a job has an error the earlier has not. */
const hasNewError = ({ before, after, changes }: ComparedJob): boolean => !before
    ? after?.model.model.findings.some(({ severity }) => severity === 'error') === true
    : changes.some(change => change.what === 'finding' && change.to?.value.severity === 'error' && change.from?.value.severity !== 'error');
