/** What the bundler reads beside TypeScript. */
declare module '*.css';
declare module '@fontsource/*';
