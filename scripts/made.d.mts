export function noteMade(files: Iterable<string>): void;
export function makeModelFiles(): string | undefined;
