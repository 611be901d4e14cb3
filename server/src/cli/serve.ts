import type { Command } from './command.js';
import { exitCodes, usageFailure } from './exit-codes.js';

export const serve: Command = {
    name: 'serve', takes: '--stdio', summary: 'Run the language server for an editor.',
    doc: ['Speaks the Language Server Protocol over standard input and output until the editor ends it. For people who set an editor up by hand.'],
    options: [{ name: 'stdio', doc: 'Use standard input and output. The only way there is.' }],
    examples: ['hotroom serve --stdio'],
    async run(args, console) {
        if (args.files.length > 0) throw usageFailure('hotroom serve takes no files; the editor names them.');
        if (args.flag('stdio') !== true) throw usageFailure('hotroom serve wants --stdio.');
        await console.serve();
        return exitCodes.none;
    },
};
