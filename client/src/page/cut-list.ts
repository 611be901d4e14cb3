/** The cut-list page. */
import { startPage } from './tables-page.js';

startPage({
    heading: 'Cut List and Stock Plan',
    working: 'Working out the cut list…',
    nothing: 'There is nothing to cut in this job yet.',
    hint: 'Arrow keys move from row to row. Enter shows the line that made the row.',
    order: 'Back in the order of the list.',
    tools: ['saveCsv'],
    hasContents: false,
    cautions: 'first',
});
