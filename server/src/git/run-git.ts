import { execFile } from 'node:child_process';
import path from 'node:path';

/** How a question to git ended, when it ended badly. */
export class GitFailure extends Error {
    constructor(readonly kind: 'no-git' | 'no-repository' | 'refused' | 'failed', message: string) {
        super(message);
    }
}

/** More than any revision holds that is worth reading. */
const mostBytes = 256_000_000;
const mostMilliseconds = 60_000;

/**
 * Settings of a repository may name programs to run. These are turned off, whatever it says; the commands used below run no filter, no text conversion
 * and no signature check of themselves.
 */
const safeSettings = [
    'core.fsmonitor=false', 'core.hooksPath=/dev/null', 'core.pager=cat', 'core.sshCommand=false', 'core.askPass=false', 'core.gitProxy=false', 'core.alternateRefsCommand=false',
    'diff.external=false', 'protocol.allow=never', 'gc.auto=0', 'maintenance.auto=false', 'log.showSignature=false',
].flatMap(setting => ['-c', setting]);

/** The environment of git: nothing that runs programs, writes, asks or goes to the network, and no other repository than the one of the folder. */
function safeEnvironment(): NodeJS.ProcessEnv {
    const env = Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^GIT_/i.test(name)));
    return { ...env, GIT_OPTIONAL_LOCKS: '0', GIT_TERMINAL_PROMPT: '0', GIT_NO_LAZY_FETCH: '1', GIT_NO_REPLACE_OBJECTS: '1', GIT_PAGER: 'cat', LC_ALL: 'C' };
}

/**
 * Asks git something, without a shell. Only commands that read are called; every word that comes from outside is checked by the caller and stands where git
 * takes it for no option.
 * @param folder to ask in, its whole path
 * @param input what the command reads
 * @returns what it wrote
 * @throws a `GitFailure` that says whether git or the repository is missing
 */
export function runGit(words: readonly string[], folder: string, input?: string): Promise<Buffer> {
    return new Promise((resolve, reject) => {
        const child = execFile('git', ['-C', folder, '--no-pager', '--literal-pathspecs', ...safeSettings, ...words], {
            // A system that looks for programs in the working folder first must not find one a repository brought along.
            cwd: path.dirname(process.execPath), env: safeEnvironment(), encoding: 'buffer', maxBuffer: mostBytes, timeout: mostMilliseconds, windowsHide: true, shell: false,
        }, (error, stdout, stderr) => {
            if (!error) { resolve(stdout); return; }
            const said = stderr.toString('utf8').trim().split('\n')[0] ?? '';
            if (error.code === 'ENOENT') reject(new GitFailure('no-git', 'git is not installed here, or not on the path. Files and folders can be compared without it.'));
            else if (/not a git repository/.test(said)) reject(new GitFailure('no-repository', 'this is no git repository. Files and folders can be compared without one.'));
            else if (/dubious ownership/.test(said)) reject(new GitFailure('refused', 'git does not read this repository because it belongs to somebody else.'));
            else reject(new GitFailure('failed', said.replace(/^fatal: /, '') || error.message));
        });
        child.stdin?.on('error', () => undefined);
        child.stdin?.end(input ?? '');
    });
}
