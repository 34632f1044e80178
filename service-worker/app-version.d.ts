/** Set by vite.config.ts when the page and the worker are built. */
declare const __APP_VERSION__: string;
