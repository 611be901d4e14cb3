import type { Severity } from '../../../language/src/core/finding.js';
import { noPaint, type Paint } from '../../../language/src/renderings/findings-text.js';

export interface TextSink {
    write(text: string): unknown;
    readonly isTTY?: boolean;
    readonly columns?: number;
}

/** Everything the commands know of the world around them, so that tests can hand them another. */
export interface Console {
    readonly cwd: string;
    readonly stdout: TextSink;
    readonly stderr: TextSink;
    readonly env: Readonly<Record<string, string | undefined>>;
    /** The clock. */
    readonly now: () => Date;
    /** Runs the language server until its client is gone. */
    readonly serve: () => Promise<void>;
}

/** What a program that reads the output can count on; a terminal gives its own width. */
export const usualWidth = 110;

export const widthOf = ({ columns, isTTY }: TextSink): number => isTTY === true && columns !== undefined && columns > 0 ? Math.max(60, Math.min(columns, 200)) : usualWidth;

const colors: Readonly<Record<Severity, string>> = { error: '\u001b[31m', warning: '\u001b[33m', info: '\u001b[36m', hint: '\u001b[36m' };
const bold = '\u001b[1m';
const faint = '\u001b[2m';
const plain = '\u001b[0m';

/** Colours for a terminal only, and not when NO_COLOR asks for none (no-color.org: set and not empty). */
export function paintFor({ stdout, env }: Console): Paint {
    const wantsNone = env['NO_COLOR'] !== undefined && env['NO_COLOR'] !== '';
    if (stdout.isTTY !== true || wantsNone || env['TERM'] === 'dumb') return noPaint;
    return { severity: (severity, text) => `${bold}${colors[severity]}${text}${plain}`, faint: text => `${faint}${text}${plain}` };
}
