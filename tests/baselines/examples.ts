import { analyze, type Analysis } from '../../language/src/analyze.js';
import { exampleText, examplePaths, TestWorkspace } from '../support/workspace.js';

/** The day the examples are looked at, for waivers that run out. */
const today = { year: 2026, month: 11, day: 24 };

/** Every file of examples/ in one workspace, at its own path, one of them with another text when that is given. */
export async function openExamples(changed?: { readonly path: string; readonly text: string }): Promise<(path: string) => Analysis> {
    const workspace = new TestWorkspace();
    const documents = new Map(examplePaths().map(path => [path, workspace.add(path, changed?.path === path ? changed.text : exampleText(path))]));
    await workspace.build();
    return path => {
        const document = documents.get(path);
        if (!document) throw new Error(`There is no example ${path}`);
        return analyze(document, workspace.hotroom, { onDefect: 'throw', today });
    };
}

/** Path of an example by the address its document has in the tests' workspace. */
export const pathOfExample = (uri: string): string => uri.replace(/^memory:\/jobs\//, '');
