/** What the measurements use of the product and of the tests, in one bundle. */
export { URI, EmptyFileSystem } from 'langium';
export { analyze, forget } from '../../language/src/analyze.js';
export { createHotroomServices } from '../../language/src/syntax/module.js';
export { createServerServices } from '../../server/src/services.js';
export { planStock } from '../../language/src/engines/stock/plan-stock.js';
export { stockOffers } from '../../language/src/renderings/stock-offers.js';
export { stockTasks } from '../../language/src/renderings/stock-tasks.js';
export { HighsInProcess } from '../../server/src/solver/highs.js';
export { catalogueUses, fileOf, randomJob } from '../properties/random-job.js';
export { isBlockText, isSmall, writeFile, writeValue } from '../properties/job-text.js';
export { blocksIn, propertiesOf } from '../../language/src/vocabulary/index.js';
export { default as fc } from 'fast-check';
