import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import oniguruma from 'vscode-oniguruma';
import textmate from 'vscode-textmate';

const require = createRequire(import.meta.url);
const grammarFile = new URL('../../syntaxes/hotroom.tmLanguage.json', import.meta.url);

/** A piece of a line with the innermost of its scopes that says something, without the language's own suffix. */
export interface Scoped { readonly text: string; readonly line: number; readonly start: number; readonly scope: string }

/** The grammar as an editor loads it. */
export async function loadGrammar(): Promise<textmate.IGrammar> {
    await oniguruma.loadWASM(readFileSync(require.resolve('vscode-oniguruma/release/onig.wasm')).buffer).catch((error: unknown) => { if (!/already/i.test(String(error))) throw error; });
    const registry = new textmate.Registry({
        onigLib: Promise.resolve({ createOnigScanner: (patterns: string[]) => new oniguruma.OnigScanner(patterns), createOnigString: (text: string) => new oniguruma.OnigString(text) }),
        loadGrammar: () => Promise.resolve(textmate.parseRawGrammar(readFileSync(grammarFile, 'utf8'), 'hotroom.tmLanguage.json')),
    });
    const grammar = await registry.loadGrammar('source.hotroom');
    if (!grammar) throw new Error('no grammar');
    return grammar;
}

export function tokenise(grammar: textmate.IGrammar, text: string): Scoped[] {
    let state = textmate.INITIAL;
    return text.split(/\r\n|\n|\r/).flatMap((content, line) => {
        const { tokens, ruleStack } = grammar.tokenizeLine(content, state);
        state = ruleStack;
        const pieces = tokens.map(({ startIndex, endIndex, scopes }) => ({ text: content.slice(startIndex, endIndex), line, start: startIndex, scope: (scopes.findLast(scope => scope !== 'source.hotroom') ?? '').replace(/\.hotroom$/, '') }))
            .filter(({ text: piece }) => piece.trim() !== '');
        // A text is one piece, though its quotes are rules of their own.
        return pieces.reduce<Scoped[]>((joined, piece) => {
            const before = joined.at(-1);
            const isOne = before?.scope === piece.scope && before.scope.startsWith('string') && before.start + before.text.length === piece.start;
            return isOne ? [...joined.slice(0, -1), { ...before, text: before.text + piece.text }] : [...joined, piece];
        }, []);
    });
}
