import type { Results } from '../assembly/results.js';
import type { RenderedJob } from '../renderings/rendered-job.js';

/** What a drawing reads of an analysed job; `analyze` gives jobs that have all of it. */
export interface JobAnalysisForDrawing extends RenderedJob { readonly results: Results }
