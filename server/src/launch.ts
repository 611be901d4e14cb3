import * as nodeModule from 'node:module';

/** File name of the bundle that is started; the build puts it in. */
declare const program: string;

// What V8 made of the bundle is kept in the user's folder for temporary files and not made again at the next start. The cache counts for what is loaded
// after it is turned on, so the program is a file of its own. `NODE_DISABLE_COMPILE_CACHE=1` does without.
if ('enableCompileCache' in nodeModule) nodeModule.enableCompileCache();
nodeModule.createRequire(import.meta.url)(`./${program}`);
// A server may be ended without a chance to write; by now it has loaded what it needs.
if ('flushCompileCache' in nodeModule) setTimeout(() => { nodeModule.flushCompileCache(); }, 3000).unref();
