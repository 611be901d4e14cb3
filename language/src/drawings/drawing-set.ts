import type { JobAnalysisForDrawing } from './drawn-job.js';
import { makeScene } from '../scene/make-scene.js';
import { usualPaper, type PaperName } from './paper.js';
import { makeSheet, type Sheet, type SheetInput } from './sheet.js';
import { titleFacts } from './title-facts.js';
import { viewOf } from './views/index.js';
import { viewNames, type ViewName } from './views/view.js';

/**
 * Draws sheets of one job, in the order of the set.
 * @param names the views wanted; a view the job has nothing for (a bench plan without benches) is left out
 * @param paper default: A3 for jobs in millimetres, tabloid for jobs in inches
 * @returns nothing while the room's own sizes are not known
 */
export function drawSheets(analysis: JobAnalysisForDrawing, names: readonly ViewName[] = viewNames, paper?: PaperName): readonly Sheet[] {
    const { job, results } = analysis;
    const scene = makeScene(job, results);
    if (!scene) return [];
    const input: SheetInput = { job, results, scene, unit: job.unit, facts: titleFacts(analysis) };
    const set = viewNames.flatMap(name => viewOf(name, input) ?? []);
    return set.flatMap((view, i) => names.includes(view.name) ? [makeSheet(view, input, paper ?? usualPaper(job.unit), { sheet: i + 1, of: set.length })] : []);
}
