import { useLayoutEffect } from "preact/hooks";

/**
 * Tells the printer the page's size while the screen that prints on it is open; mm. In the same
 * turn as the labels are drawn: who prints at once must not get the paper chosen before.
 */
export function usePageSize(width: number, height: number): void {
  useLayoutEffect(() => {
    // A style sheet of the page's own making: its policy allows no styles written into it.
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`@page { size: ${width}mm ${height}mm; margin: 0 }`);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
    };
  }, [width, height]);
}
