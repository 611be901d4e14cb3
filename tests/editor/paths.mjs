/** Where the editor suite keeps things. Everything it makes lives under the ignored cache folder. */
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const here = path.dirname(fileURLToPath(import.meta.url));
export const root = path.resolve(here, '../..');
export const cache = path.join(root, '.cache');
export const hostDir = path.join(cache, 'editor-host');
export const chromiumDir = path.join(cache, 'chromium');
export const screens = path.join(cache, 'screens');
