import { beamRows, sectionRows } from './beams.js';
import { checkPublished } from './table.js';

checkPublished([...beamRows, ...sectionRows]);
