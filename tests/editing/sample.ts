import { createHotroomServices } from '../../language/src/syntax/module.js';
import { HotroomLexer } from '../../language/src/syntax/lexer.js';
import type { Analysis } from '../../language/src/analyze.js';
import type { SeenJob, Sight } from '../../language/src/editing/offer.js';
import { readRaw, type RawText } from '../../language/src/editing/raw-facts.js';

const { Lexer } = createHotroomServices().hotroom.parser;
if (!(Lexer instanceof HotroomLexer)) throw new Error('not the lexer of the language');
export const lexer: HotroomLexer = Lexer;
export const rawOf = (text: string): RawText => readRaw(text, lexer);

/** Names by kind and paths, as if other files gave them. */
export const sightOf = (names: Readonly<Record<string, readonly string[]>>, paths: readonly string[] = []): Sight => ({
    names: kinds => kinds.flatMap(kind => (names[kind] ?? []).map(name => ({ name, kind }))),
    paths: () => paths,
});

/** What a file that was analysed lets completion know, as the server tells it. */
export const sightOfAnalysis = ({ jobs, file }: Analysis, names: Readonly<Record<string, readonly string[]>>, paths: readonly string[] = []): Sight => {
    const job = (offset: number): SeenJob | undefined => {
        const around = jobs.filter(({ job: { block: { span } } }) => span.start <= offset && offset <= span.end);
        const [own] = around.toSorted((a, b) => (a.job.block.span.end - a.job.block.span.start) - (b.job.block.span.end - b.job.block.span.start));
        if (own) return { analysis: own };
        const series = file.series.find(({ span }) => span.start <= offset && offset <= span.end);
        const made = series && jobs.find(one => one.job.block.base?.value === series.name?.value);
        return made && { analysis: made, as: made.job.block.name?.value ?? '' };
    };
    const outer = sightOf(names, paths);
    return {
        ...outer, job, series: name => file.series.find(series => series.name?.value === name), houseRules: () => file.rules,
        names: (kinds, offset) => [...(job(offset)?.analysis.job.block.children ?? []).flatMap(({ kind, name }) => name && kinds.includes(kind) ? [{ name: name.value, kind }] : []), ...outer.names(kinds, offset)],
    };
};

/** Text without its cursor mark `<|>`, and where the mark stood. */
export function withCursor(marked: string): { readonly text: string; readonly offset: number } {
    const offset = marked.indexOf('<|>');
    if (offset < 0 || marked.indexOf('<|>', offset + 1) >= 0) throw new Error('The text needs one cursor <|>.');
    return { text: marked.replace('<|>', ''), offset };
}
