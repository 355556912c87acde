/**
 * Lets the type checker read each component as the TypeScript that its parser makes of it. Left to itself it reads
 * the markup first and the script when that file is linted, and starts over with every component: half of the time
 * that linting takes. Read by the parser when it loads, so this stands first among the imports.
 */
process.env['SVELTE_ESLINT_PARSER_EXPERIMENTAL_TS_SYS_HOOK'] ??= '1';
