import type { InsideSize } from '../core/geometry.js';

/** Everything the engines worked out for one job. A part is absent when the job lacks what it needs; the lack has its own finding. */
export interface Results {
    readonly inside?: InsideSize;
}
