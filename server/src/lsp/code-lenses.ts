import type { LangiumDocument } from 'langium';
import type { CodeLensProvider } from 'langium/lsp';
import type { CodeLens } from 'vscode-languageserver';
import { lensesOf } from '../../../language/src/editing/lenses.js';
import { letsSaidAgain } from '../../../language/src/editing/name-index.js';
import { callableFrom, countJobsFrom } from '../../../language/src/editing/series-calls.js';
import type { HotroomServerServices } from '../services.js';
import { NamesInSight } from './names.js';

/** The command of the editor that shows a cut list; an editor without it shows the line all the same. */
const showCutList = 'hotroom.showCutList';

export class HotroomCodeLenses implements CodeLensProvider {
    constructor(private readonly services: HotroomServerServices) {}

    provideCodeLens(document: LangiumDocument): CodeLens[] {
        const { Reader, Places } = this.services.editing;
        const analysis = Reader.analysis(document);
        const uri = document.uri.toString();
        const { library, uris } = new NamesInSight(this.services);
        const countJobs = (start: number): number => {
            const series = callableFrom(uri, start, library);
            return series ? countJobsFrom(series.fact, uris, library) : 0;
        };
        return (analysis ? lensesOf(analysis, { countJobs, letsSaidAgain: (start, end) => letsSaidAgain(uri, start, end, library) }) : []).map(({ at, title, opens, job }) => ({
            range: Places.range(at),
            command: opens === 'nothing' ? { title, command: '' } : { title, command: showCutList, arguments: [{ uri, ...(job !== undefined && { job }) }] },
        }));
    }
}
