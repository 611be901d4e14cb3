import type { ReportedFinding, Severity } from '../../../language/src/core/finding.js';
import { severities } from '../../../language/src/renderings/findings-text.js';
import type { OptionDefinition, ParsedArguments } from './arguments.js';
import { exitCodes, type ExitCode } from './exit-codes.js';

export const failOnOption: OptionDefinition = {
    name: 'fail-on', value: 'SEVERITY', choices: [...severities, 'never'], doc: 'Least severity that makes the exit code 1: error (default), warning, info, hint or never.',
};
export const rootOption: OptionDefinition = {
    name: 'root', value: 'DIR', doc: 'Folder a `use` may not leave. Default: the working folder for files in it, else the file\'s own folder.',
};

/** 1 when a finding is as grave as `--fail-on` or graver. */
export function exitCodeFor(findings: readonly Pick<ReportedFinding, 'severity'>[], args: ParsedArguments): ExitCode {
    const limit = args.value('fail-on') ?? 'error';
    if (limit === 'never') return exitCodes.none;
    const gravest = severities.indexOf(limit as Severity);
    return findings.some(({ severity }) => severities.indexOf(severity) <= gravest) ? exitCodes.findings : exitCodes.none;
}
