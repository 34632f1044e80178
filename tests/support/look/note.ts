/** Prints a measured figure, for whoever reads the run. */
export const note = (text: string): void => console.info(text);
