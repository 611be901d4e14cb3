import { formatText } from '../../../language/src/editing/format.js';
import { readRaw } from '../../../language/src/editing/raw-facts.js';
import { applyChanges } from '../../../language/src/editing/text-lines.js';
import { showCount } from '../../../language/src/renderings/show-figures.js';
import { HotroomLexer, isReadingReport } from '../../../language/src/syntax/lexer.js';
import { TextLines } from '../../../language/src/renderings/text-lines.js';
import { createHotroomServices } from '../../../language/src/syntax/module.js';
import type { Command } from './command.js';
import { exitCodes, usageFailure } from './exit-codes.js';
import { findFiles, readMarkedText, shown, type JobFile } from './files.js';
import { writeWhole } from './written-file.js';

export const fmt: Command = {
    name: 'fmt', takes: 'FILES|FOLDERS…', summary: 'Bring job files into their usual shape.',
    doc: ['Changes white space only, in place, and names the files it changed. Lines that cannot be read stay as they are. A file whose braces, brackets or quotation marks do not close is left alone and named, with exit code 1: nobody can tell what stands in what.'],
    options: [{ name: 'check', doc: 'Change nothing; name the files that would change, with exit code 1 when there is one.' }],
    examples: ['hotroom fmt birch-point.hotroom', 'hotroom fmt --check jobs'],
    async run(args, { cwd, stdout, stderr }) {
        if (args.files.length === 0) throw usageFailure('hotroom fmt wants files or folders, such as hotroom fmt birch-point.hotroom.');
        const isCheck = args.flag('check') === true;
        const files = findFiles(args.files, cwd);
        const lexer = createHotroomServices().hotroom.parser.Lexer;
        if (!(lexer instanceof HotroomLexer)) throw new Error('The lexer is not the one of the language');
        // all are read before one is written, so that a file that cannot be read leaves everything as it was
        const all = files.map(file => formatted(file, lexer));
        const changed = all.filter(({ before, after }) => before !== after);
        for (const { file, after } of changed) {
            if (!isCheck) writeWhole(file.path, after, file.name);
            stdout.write(`${shown(file.name)}\n`);
        }
        const open = all.flatMap(({ whyNot }) => whyNot ?? []);
        for (const why of open) stderr.write(`hotroom: ${why}\n`);
        stdout.write(summary(changed.length, files.length, isCheck));
        return open.length > 0 || (isCheck && changed.length > 0) ? exitCodes.findings : exitCodes.none;
    },
};

interface Formatted { readonly file: JobFile; readonly before: string; readonly after: string; readonly whyNot?: string }

/** Mistakes after which indentation would be a guess. */
const opens: ReadonlySet<string> = new Set(['block-not-closed', 'brace-missing', 'brace-without-partner', 'bracket-not-closed', 'bracket-without-partner', 'text-not-closed', 'file-too-large']);

function formatted(file: JobFile, lexer: HotroomLexer): Formatted {
    const { text, mark } = readMarkedText(file.path, file.name);
    const before = mark + text;
    const { report } = lexer.tokenize(text);
    const [problem] = isReadingReport(report) ? report.problems.filter(({ id }) => opens.has(id)) : [];
    if (problem) {
        const { line, character } = new TextLines(text).at(problem.start);
        return { file, before, after: before, whyNot: `${shown(file.name)}:${line + 1}:${character + 1}: ${problem.message} The file is left as it is.` };
    }
    return { file, before, after: mark + applyChanges(text, formatText(readRaw(text, lexer), lexer, { indent: '    ' })) };
}

function summary(changed: number, files: number, isCheck: boolean): string {
    if (changed === 0) return `${showCount(files, 'file')}, nothing to change.\n`;
    return `${changed} of ${showCount(files, 'file')} ${isCheck ? 'would change' : 'changed'}.\n`;
}
