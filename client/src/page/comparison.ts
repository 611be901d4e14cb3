/** The comparison page: what changed from one side to the other, by what it asks for. */
import { startPage } from './tables-page.js';

startPage({
    heading: 'Comparison',
    working: 'Comparing…',
    nothing: 'There is nothing to compare.',
    hint: 'Arrow keys move from row to row. Enter shows the line as it is now, Shift+Enter as it was before.',
    order: 'Back in the order of the comparison.',
    tools: ['copyMarkdown', 'showTexts'],
    hasContents: true,
    cautions: 'last',
});
