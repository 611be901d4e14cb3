/** Draws `hotroom.png`, the 128-pixel picture of the extension, from `hotroom.svg`. Run it after changing the drawing. */
import fs from 'node:fs';
import { launchBrowser } from '../../tests/editor/browser.mjs';

const folder = new URL('.', import.meta.url);
const browser = await launchBrowser();
try {
    const page = await browser.newPage({ viewport: { width: 128, height: 128 } });
    const drawing = fs.readFileSync(new URL('hotroom.svg', folder), 'utf8');
    await page.setContent(`<style>body{margin:0}svg{display:block;width:128px;height:128px}</style>${drawing}`);
    fs.writeFileSync(new URL('hotroom.png', folder), await page.screenshot({ omitBackground: true }));
} finally {
    await browser.close();
}
