import type { LengthUnit } from '../core/show.js';

/** What a project says of a job that the job itself does not. */
export interface JobDefaults {
    /** Rule sets of a job that names none. */
    readonly rules?: readonly string[];
    /** The unit messages and documents answer in, whatever the job is written in. */
    readonly units?: LengthUnit;
}
