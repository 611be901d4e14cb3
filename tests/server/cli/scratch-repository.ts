import { execFileSync } from 'node:child_process';
import { exampleText } from '../../support/workspace.js';
import { Folder } from './command-line.js';

/** A git repository of its own for one test, with the standard job and its catalogues. */
export class ScratchRepository extends Folder {
    constructor(files: Readonly<Record<string, string>> = {}) {
        super({
            'jobs/birch.hotroom': exampleText('birch-point.hotroom').replaceAll('"catalogue/', '"../catalogue/'),
            'catalogue/skerry.hotroom': exampleText('catalogue/skerry.hotroom'), 'catalogue/heaters.hotroom': exampleText('catalogue/heaters.hotroom'), ...files,
        });
        this.git('init', '-q', '-b', 'main');
        this.commit('first');
    }
    git(...words: readonly string[]): string {
        const env = { PATH: process.env['PATH'] ?? '', HOME: this.path, GIT_CONFIG_GLOBAL: '/dev/null', GIT_AUTHOR_DATE: '2026-11-20T12:00:00Z', GIT_COMMITTER_DATE: '2026-11-20T12:00:00Z' };
        return execFileSync('git', ['-c', 'user.name=Design Office', '-c', 'user.email=office@example.invalid', ...words], { cwd: this.path, env, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
    }
    commit(message: string): void {
        this.git('add', '-A');
        this.git('commit', '-q', '-m', message);
    }
    change(name: string, from: string, to: string): void {
        const text = this.read(name);
        if (!text.includes(from)) throw new Error(`${name} does not say ${from}`);
        this.write(name, text.replace(from, to));
    }
}
