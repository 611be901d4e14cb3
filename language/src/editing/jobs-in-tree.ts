import type { AstNode } from 'langium';
import * as ast from '../syntax/generated/ast.js';
import { nameOf, textOf } from '../syntax/words.js';

/** A job or variant by the name its documents bear. */
export interface JobInFile { readonly job: string; readonly title?: string }

/** Named jobs of a file and their variants, in the order written. */
export function jobsInTree(root: AstNode): readonly JobInFile[] {
    if (!ast.isFile(root)) return [];
    return root.items.filter(({ key }) => key === 'job').flatMap(job => {
        const name = nameOf(job);
        if (name === undefined) return [];
        const variants = job.body.filter(({ key }) => key === 'variant').flatMap(variant => nameOf(variant) ?? []);
        return [entry(name, titleOf(job)), ...variants.map(variant => entry(`${name}-${variant}`, titleOf(job)))];
    });
}

const entry = (job: string, title: string | undefined): JobInFile => ({ job, ...(title !== undefined && { title }) });

function titleOf(fact: ast.Fact): string | undefined {
    const text = fact.phrases[0]?.terms.find(ast.isText);
    return text && textOf(text);
}
