import { test } from 'vitest';
import { damageLines } from './damage-lines.js';

test.each(['birch-point.hotroom', 'house/petrel-wharf.hotroom'])('%s with any fourth line missing, or cut off behind it, still is a model that can be read back and compared', async path => {
    await damageLines(path, 4);
});
