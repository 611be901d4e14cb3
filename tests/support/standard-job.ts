import { exampleText } from './workspace.js';
import { dedent } from './dedent.js';

/**
 * The standard job with some of its blocks replaced: rule examples and rule tests say only what differs. Blocks of `snippet` with the kind and
 * name of a standard block take its place; others join the job; catalogue entries (`heater_model` …) join a catalogue of the same file, where
 * they shadow nothing and need names of their own. `// without vent exhaust` takes a block away. `job.rules` and other facts of the job itself
 * are written as bare facts: `rules us_commercial`.
 */
export function withStandardJob(snippet: string): string {
    const pieces = topLevelPieces(dedent(snippet));
    const without = new Set(pieces.flatMap(piece => /^\s*\/\/ without (.+)$/.exec(piece.text)?.[1]?.trim() ?? []));
    const entries = pieces.filter(piece => piece.isBlock && catalogueKinds.has(piece.kind));
    const blocks = pieces.filter(piece => !(piece.isBlock && catalogueKinds.has(piece.kind)));
    const replaced = new Set(pieces.map(piece => piece.key).filter(key => key !== ''));
    const standard = topLevelPieces(standardBody()).filter(piece => piece.key === '' || !(replaced.has(piece.key) || without.has(piece.key)));
    return [
        'use "catalogue/skerry.hotroom"', 'use "catalogue/heaters.hotroom"', '',
        ...(entries.length > 0 ? ['catalogue extra {', ...entries.map(piece => piece.text), '}', ''] : []),
        'job standard "Standard job" {', ...blocks.map(piece => piece.text), ...standard.map(piece => piece.text), '}', '',
    ].join('\n');
}

const catalogueKinds = new Set(['panel_system', 'material', 'stock', 'timber', 'screw', 'door_model', 'window_model', 'light_model', 'bench_build', 'heater_model']);

interface Piece { readonly text: string; readonly key: string; readonly kind: string; readonly isBlock: boolean }

/** Splits the body of a job into its facts and blocks, remarks and markers with the piece they stand under. */
export function topLevelPieces(body: string): Piece[] {
    const pieces: Piece[] = [];
    let lines: string[] = [];
    let depth = 0;
    const flush = (): void => {
        if (lines.length === 0) return;
        pieces.push(describe(lines.join('\n')));
        lines = [];
    };
    for (const line of body.split('\n')) {
        const isRemark = /^\s*\/\//.test(line);
        if (depth === 0 && !isRemark) flush();
        if (depth === 0 && isRemark && (/without /.test(line) || (lines.length > 0 && !/^\s*\/\/(@|\s*\^)/.test(line)))) flush();
        lines.push(line);
        const code = line.replace(/"(?:[^"\\]|\\.)*"(?!\d)/g, match => /^"[^0-9]*$/.test(match) ? '' : match).replace(/\/\/.*$/, '');
        depth += (code.match(/\{/g) ?? []).length - (code.match(/\}/g) ?? []).length;
    }
    flush();
    return pieces.filter(piece => piece.text.trim() !== '');
}

function describe(text: string): Piece {
    const [first = ''] = text.split('\n').filter(line => line.trim() && !/^\s*\/\//.test(line));
    const match = /^\s*([a-z_0-9]+)(?:\s+([A-Za-z_][\w-]*))?/.exec(first);
    if (!match) return { text, key: '', kind: '', isBlock: false };
    const [, kind = '', second = ''] = match;
    const isBlock = first.includes('{') || ['bench', 'door', 'heater', 'vent', 'sensor', 'site', 'room'].includes(kind);
    const isNameless = ['site', 'room', 'thermometer'].includes(kind) || second === 'on' || second === '';
    return { text, kind, isBlock, key: isBlock && !isNameless ? `${kind} ${second}` : kind };
}

let body: string | undefined;
function standardBody(): string {
    if (body === undefined) {
        const text = exampleText('birch-point.hotroom');
        const start = text.indexOf('{', text.indexOf('job ')) + 1;
        body = text.slice(start, text.lastIndexOf('}'));
    }
    return body;
}
