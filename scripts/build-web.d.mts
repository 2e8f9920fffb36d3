// Types of build-web.mjs, for the tests.
export const WEB_FOLDER: string;
export function buildWeb(): boolean;
