import { isLanguageRule } from '../../../language/src/model/language-rules.js';
import { findingsExport } from '../../../language/src/renderings/findings-json.js';
import { countSeverities, findingText, Places, standingText, summaryText } from '../../../language/src/renderings/findings-text.js';
import type { ReportedFinding } from '../../../language/src/core/finding.js';
import { sarifLog } from '../../../language/src/renderings/sarif.js';
import type { Command } from './command.js';
import { paintFor, widthOf, type Console } from './console.js';
import { usageFailure } from './exit-codes.js';
import { exitCodeFor, failOnOption, rootOption } from './fail-on.js';
import { findFiles } from './files.js';
import { SettingsFiles, settingsOptions } from './settings-files.js';
import { todayOption, todayOf } from './today-option.js';
import { version } from './version.js';
import { openWorkspace, type Workspace } from './workspace.js';

export const check: Command = {
    name: 'check', takes: 'FILES|FOLDERS…', summary: 'Check job files and print what is wrong.',
    doc: [
        'Reads the files, and every .hotroom file in the folders (not those in node_modules or in folders whose name begins with a dot), with all they use. Errors in the text of a file that is only used are printed too.',
        'Every finding begins with path:line:column: severity rule: message. Lines and columns count from 1, columns in UTF-16 units as editors count them.',
        'Settings of the project are read from hotroom.json, from the folder of each file up to the root; the nearest place wins, key by key. What is wrong with them is printed as findings.',
        'A check without findings is no approval: the heater\'s manual, the local code and the authority that applies it decide.',
    ],
    options: [
        { name: 'format', value: 'FORMAT', choices: ['text', 'json', 'sarif'], doc: 'text (default), json or sarif (SARIF 2.1.0).' },
        failOnOption, rootOption, ...settingsOptions, todayOption,
    ],
    examples: ['hotroom check birch-point.hotroom', 'hotroom check jobs --format sarif --fail-on warning'],
    async run(args, console) {
        if (args.files.length === 0) throw usageFailure('hotroom check wants files or folders, such as hotroom check birch-point.hotroom.');
        const workspace = await openWorkspace(findFiles(args.files, console.cwd, args.value('root')), console.cwd, { settings: new SettingsFiles(args, console.cwd), today: todayOf(args, console) });
        const findings = findingsOf(workspace);
        print(findings, workspace, args.value('format') ?? 'text', console);
        return exitCodeFor(findings, args);
    },
};

/** Mistakes of the settings, findings of the files asked for, file by file, then the errors in the text of files they use. */
function findingsOf({ files, used, settingsFindings }: Workspace): readonly ReportedFinding[] {
    return [
        ...settingsFindings,
        ...files.flatMap(({ analysis, root }) => analysis.findings.map(finding => withRoot(finding, root))),
        ...used.flatMap(({ analysis, root }) => analysis.findings.filter(({ rule, severity }) => severity === 'error' && isLanguageRule(rule)).map(finding => withRoot(finding, root))),
    ];
}

/** Which folder a `use` may not leave is decided by how the command is called, so only the command can say how to change it. */
function withRoot(finding: ReportedFinding, root: string): ReportedFinding {
    return finding.rule === 'use-outside-workspace' ? { ...finding, message: `${finding.message} That folder is ${root} here; --root DIR names another.` } : finding;
}

function print(findings: readonly ReportedFinding[], { files, sources, remarks, settings }: Workspace, format: string, console: Console): void {
    const places = new Places(sources);
    const names = files.map(({ name }) => name);
    const leftOut = files.flatMap(({ analysis }) => analysis.leftOut);
    for (const remark of remarks) console.stderr.write(`hotroom: ${remark}\n`);
    switch (format) {
        case 'json': console.stdout.write(`${JSON.stringify(findingsExport(findings, names, places, { settings, leftOut, jobs: files.flatMap(({ analysis }) => analysis.file.jobs) }), undefined, 2)}\n`); return;
        case 'sarif': console.stdout.write(`${JSON.stringify(sarifLog(findings, names, places, { version }, leftOut), undefined, 2)}\n`); return;
        default: {
            const [width, paint] = [widthOf(console.stdout), paintFor(console)];
            const texts = findings.map(finding => `${findingText(finding, places, { width, paint })}\n\n`);
            console.stdout.write(`${texts.join('')}${standingText(findings, leftOut, places, width)}${summaryText(countSeverities(findings), files.length)}\n`);
        }
    }
}
